package dev.gantrywright.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The system's own list, as it looks with a stick, a card and a disk. */
class LinuxDrivesTest {
  @TempDir Path folder;

  @BeforeEach
  void devices() throws IOException {
    Path sys = folder.resolve("sys");
    link("8:0", Files.createDirectories(sys.resolve("pci/ata1/block/sda/sda1")));
    Files.writeString(sys.resolve("pci/ata1/block/sda/removable"), "0\n");
    link("8:17", Files.createDirectories(sys.resolve("pci/usb1/1-2/block/sdb/sdb1")));
    link("8:33", Files.createDirectories(sys.resolve("pci/reader/block/sdc/sdc1")));
    Files.writeString(sys.resolve("pci/reader/block/sdc/removable"), "1\n");
    link("179:1", Files.createDirectories(sys.resolve("pci/mmc_host/mmc0/block/mmcblk0/p1")));
    Files.createDirectories(folder.resolve("a card"));
  }

  private void link(String number, Path device) throws IOException {
    Path dev = Files.createDirectories(folder.resolve("dev"));
    Files.createSymbolicLink(dev.resolve(number), device);
  }

  private List<Drive> list() throws IOException {
    String card = folder.resolve("a card").toString().replace(" ", "\\040");
    Path info =
        Files.writeString(
            folder.resolve("mountinfo"),
            """
            21 1 8:0 / / rw,relatime shared:1 - ext4 /dev/sda1 rw
            22 21 0:5 / /proc rw - proc proc rw
            23 21 7:0 / /snap/x ro - squashfs /dev/loop0 ro
            24 21 8:17 / %s rw,nosuid - vfat /dev/sdb1 rw,fmask=0022
            25 21 8:33 / /media/no ro,nosuid - exfat /dev/sdc1 ro
            26 21 179:1 / /media/mmc rw - vfat /dev/mmcblk0p1 rw
            broken line
            """
                .formatted(card));
    return new LinuxDrives(info, folder.resolve("dev")).now();
  }

  @Test
  void findsDrivesAndTellsWhichCanBeTakenOut() throws IOException {
    List<Drive> drives = list();
    assertThat(drives)
        .extracting(Drive::device)
        .containsExactly("/dev/sda1", "/dev/sdb1", "/dev/sdc1", "/dev/mmcblk0p1");
    assertThat(drives).extracting(Drive::removable).containsExactly(false, true, true, true);
    assertThat(drives).extracting(Drive::readOnly).containsExactly(false, false, true, false);
    assertThat(drives.get(1).root()).isEqualTo(folder.resolve("a card"));
    assertThat(drives.get(1).totalBytes()).isPositive();
    assertThat(drives.get(1).fat()).isTrue();
    assertThat(drives.get(2).fat()).isFalse();
  }

  @Test
  void checksSpeakOfFormatLockSizeAndName() {
    Drive good = new Drive(Path.of("/m"), "/dev/sdb1", "vfat", true, false, 8L << 30, 4L << 30);
    assertThat(ids(good, "FULMAR.IMG")).isEmpty();
    assertThat(ids(good, "fulmar-m4.bin")).containsExactly("name-not-short", "name-not-looked-for");
    Drive bad = new Drive(Path.of("/m"), "/dev/sdb1", "exfat", true, true, 64L << 30, 1000);
    assertThat(ids(bad, "FULMAR.IMG"))
        .containsExactly("card-read-only", "card-not-fat", "card-full");
    Drive large = new Drive(Path.of("/m"), "/dev/sdb1", "vfat", true, false, 64L << 30, 0);
    assertThat(ids(large, "FULMAR.IMG")).containsExactly("card-large");
    Drive disk = new Drive(Path.of("/m"), "/dev/sda1", "ext4", false, false, 64L << 30, 0);
    assertThat(CardCheck.look(disk, "FULMAR.IMG", Optional.empty(), 5))
        .noneMatch(LoadRemark::error)
        .extracting(LoadRemark::id)
        .containsExactly("card-not-fat", "not-removable");
  }

  @Test
  void thisSystemsListCanBeRead() throws IOException {
    assertThat(Drives.ofSystem(System.getProperty("os.name")).now()).isNotNull();
  }

  private static List<String> ids(Drive drive, String name) {
    return CardCheck.look(drive, name, Optional.of("FULMAR.IMG"), 100_000).stream()
        .map(LoadRemark::id)
        .toList();
  }
}

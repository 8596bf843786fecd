package dev.gantrywright.image;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Asks every question about an image, worst answers first. */
public final class ImageJudge {
  private static final List<ImageCheck> CHECKS =
      List.of(
          new BlankCheck(),
          new FormatCheck(),
          new MachineCheck(),
          new PlaceCheck(),
          new StackCheck(),
          new VectorCheck(),
          new LinkAddressCheck(),
          new EntryCheck(),
          new RamCheck(),
          new LpcChecksumCheck(),
          new SecondStageCheck(),
          new Uf2Check(),
          new AvrCheck(),
          new HistoryCheck(),
          new BoardNameCheck());

  private ImageJudge() {}

  /** Judges an image for a controller, its bootloader and its circumstances. */
  public static Verdict judge(Image image, Chip chip, Loader loader, Circumstances around) {
    Examination e = Examination.of(image, chip, loader, around);
    List<Remark> remarks = new ArrayList<>();
    for (ImageCheck check : CHECKS) {
      check.check(e, remarks::add);
    }
    remarks.sort(Comparator.comparing(Remark::level));
    return new Verdict(e, remarks, MemoryPicture.of(e));
  }
}

package dev.gantrywright.board;

import dev.gantrywright.link.pty.Pty;
import java.io.IOException;
import java.net.UnixDomainSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * A board inside QEMU, with a bootloader at the start of flash and an image behind it. Its serial
 * port is a pseudo-terminal, so that the program opens it like any other; its endstop inputs are
 * bytes in RAM that a test writes while the board runs.
 */
public final class EmulatedBoard implements AutoCloseable {
  private static final long ARM_INPUTS = 0x20000000L;
  private static final long FLASH = 0x08000000L;
  private static final int PATIENCE_SECONDS = 20;

  private final Process process;
  private final long inputs;
  private final SocketChannel serial;
  private final SocketChannel control;
  private final Pty pty;
  private final Thread toBoard;
  private final Thread fromBoard;

  private EmulatedBoard(
      Process process, long inputs, SocketChannel serial, SocketChannel control, Pty pty) {
    this.process = process;
    this.inputs = inputs;
    this.serial = serial;
    this.control = control;
    this.pty = pty;
    this.toBoard = new Thread(this::pumpToBoard, "to the emulated board");
    this.fromBoard = new Thread(this::pumpFromBoard, "from the emulated board");
    toBoard.setDaemon(true);
    fromBoard.setDaemon(true);
    toBoard.start();
    fromBoard.start();
  }

  /**
   * Boots an image on a Cortex-M4 part.
   *
   * @param work a folder for sockets and files; short, since socket names are limited
   * @param loader the bootloader's ELF file
   * @param image the raw image
   * @param offset where it stands in flash
   */
  public static EmulatedBoard boot(Path work, Path loader, byte[] image, long offset)
      throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory(work, "b");
    Path flash = Files.write(folder.resolve("flash.bin"), image);
    return start(
        folder,
        ARM_INPUTS,
        "qemu-system-arm",
        "-M",
        "netduinoplus2",
        "-kernel",
        loader.toString(),
        "-device",
        "loader,file=" + flash + ",addr=" + (FLASH + offset) + ",force-raw=on");
  }

  /**
   * Boots an image on an AVR part with the core, memories and first serial port of the ATmega1281.
   *
   * @param work as above
   * @param hex the image as Intel HEX
   * @param inputs where the firmware keeps its inputs, as the linker's symbol gives it; AVR symbols
   *     of RAM begin at 0x800000, and so does RAM in the emulator
   */
  public static EmulatedBoard bootAvr(Path work, Path hex, long inputs)
      throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory(work, "b");
    return start(folder, inputs, "qemu-system-avr", "-M", "mega", "-device", "loader,file=" + hex);
  }

  private static EmulatedBoard start(Path folder, long inputs, String... machine)
      throws IOException, InterruptedException {
    Path serialSocket = folder.resolve("s");
    Path controlSocket = folder.resolve("q");
    List<String> command = new ArrayList<>(List.of(machine));
    command.addAll(
        List.of(
            "-nographic",
            "-monitor",
            "none",
            "-accel",
            "tcg",
            "-chardev",
            "socket,id=u,path=" + serialSocket + ",server=on,wait=on",
            "-serial",
            "chardev:u",
            "-qtest",
            "unix:" + controlSocket + ",server=on,wait=off",
            "-qtest-log",
            "/dev/null"));
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("qemu.log").toFile())
            .start();
    SocketChannel serial = connect(process, serialSocket, folder);
    SocketChannel control = connect(process, controlSocket, folder);
    return new EmulatedBoard(process, inputs, serial, control, Pty.open());
  }

  private static SocketChannel connect(Process process, Path socket, Path folder)
      throws IOException, InterruptedException {
    IOException last = null;
    long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
    while (process.isAlive() && System.nanoTime() < until) {
      try {
        return SocketChannel.open(UnixDomainSocketAddress.of(socket));
      } catch (IOException e) {
        last = e;
        Thread.sleep(10);
      }
    }
    process.destroyForcibly();
    throw new IOException(
        "the emulator did not come up: " + Files.readString(folder.resolve("qemu.log")), last);
  }

  /** The port that the board answers on. */
  public String port() {
    return pty.path();
  }

  /** Sets an endstop input, in the firmware's order; true is a high level. */
  public void input(int index, boolean high) throws IOException {
    String line =
        String.format(java.util.Locale.ROOT, "writeb 0x%x 0x%d%n", inputs + index, high ? 1 : 0);
    control.write(ByteBuffer.wrap(line.replace("\r", "").getBytes(StandardCharsets.US_ASCII)));
    ByteBuffer answer = ByteBuffer.allocate(256);
    control.read(answer);
    String text = new String(answer.array(), 0, answer.position(), StandardCharsets.US_ASCII);
    if (!text.startsWith("OK")) {
      throw new IOException("the emulator answered " + text);
    }
  }

  private void pumpToBoard() {
    byte[] buffer = new byte[1024];
    try {
      for (int n = pty.read(buffer); n >= 0; n = pty.read(buffer)) {
        ByteBuffer out = ByteBuffer.wrap(buffer, 0, n);
        while (out.hasRemaining()) {
          serial.write(out);
        }
      }
    } catch (IOException e) {
      // The board was switched off.
      return;
    }
  }

  private void pumpFromBoard() {
    ByteBuffer buffer = ByteBuffer.allocate(1024);
    try {
      while (serial.read(buffer) >= 0) {
        pty.write(Arrays.copyOf(buffer.array(), buffer.position()));
        buffer.clear();
      }
    } catch (IOException e) {
      // The board was switched off.
      return;
    }
  }

  @Override
  public void close() throws IOException {
    process.destroyForcibly();
    serial.close();
    control.close();
    pty.close();
    try {
      process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
      toBoard.join(1000);
      fromBoard.join(1000);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}

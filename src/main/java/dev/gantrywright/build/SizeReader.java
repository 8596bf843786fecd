package dev.gantrywright.build;

import java.util.OptionalLong;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Memory use from build output: the linker's {@code --print-memory-usage} table, {@code size} in
 * its Berkeley form and in the form for AVR.
 *
 * <p>Source: GNU ld and GNU binutils size manuals; the AVR form as avr-size prints it.
 */
final class SizeReader {
  private static final Pattern REGION =
      Pattern.compile(
          "^\\s*(\\S+):\\s+(\\d+) (B|KB|MB|GB)\\s+(\\d+) (B|KB|MB|GB)\\s+[0-9.]+%\\s*$");
  private static final Pattern BERKELEY_HEAD =
      Pattern.compile("^\\s*text\\s+data\\s+bss\\s+dec\\s+hex\\b.*$");
  private static final Pattern BERKELEY =
      Pattern.compile("^\\s*(\\d+)\\s+(\\d+)\\s+(\\d+)\\s+\\d+\\s+[0-9a-f]+\\b.*$");
  private static final Pattern AVR =
      Pattern.compile("^(Program|Data|EEPROM):\\s+(\\d+) bytes(?: \\(([0-9.]+)% Full\\))?.*$");

  private final Consumer<ReportedSize> out;
  private boolean afterHead;

  SizeReader(Consumer<ReportedSize> out) {
    this.out = out;
  }

  void line(String text) {
    boolean headed = afterHead;
    afterHead = BERKELEY_HEAD.matcher(text).matches();
    Matcher region = REGION.matcher(text);
    if (region.matches() && fits(region.group(2)) && fits(region.group(4))) {
      out.accept(
          new ReportedSize(
              region.group(1),
              bytes(region.group(2), region.group(3)),
              OptionalLong.of(bytes(region.group(4), region.group(5)))));
      return;
    }
    Matcher berkeley = BERKELEY.matcher(text);
    if (headed && berkeley.matches() && fits(berkeley.group(1) + berkeley.group(2))) {
      afterHead = true;
      out.accept(plain("text", berkeley.group(1)));
      out.accept(plain("data", berkeley.group(2)));
      out.accept(plain("bss", berkeley.group(3)));
      return;
    }
    Matcher avr = AVR.matcher(text);
    if (avr.matches() && fits(avr.group(2))) {
      out.accept(plain(avr.group(1), avr.group(2)));
    }
  }

  private static boolean fits(String digits) {
    return digits.length() <= 15;
  }

  private static ReportedSize plain(String region, String digits) {
    return new ReportedSize(region, Long.parseLong(digits), OptionalLong.empty());
  }

  private static long bytes(String digits, String unit) {
    return Long.parseLong(digits)
        << switch (unit) {
          case "KB" -> 10;
          case "MB" -> 20;
          case "GB" -> 30;
          default -> 0;
        };
  }
}

package dev.gantrywright.image;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Flash and RAM as filled by an image: data for any drawing.
 *
 * @param banks flash first, then each bank of RAM
 */
public record MemoryPicture(List<Bank> banks) {
  public MemoryPicture {
    banks = List.copyOf(banks);
  }

  /** What fills a stretch of memory. */
  public enum Kind {
    BOOTLOADER,
    PROGRAM,
    VARIABLES,
    CLEARED,
    /** Between the highest variable and the top of the stack. */
    STACK_ROOM,
    FREE,
    /** Beyond the memory that is there. */
    OVER
  }

  /** One stretch. */
  public record Fill(Kind kind, Range range, String label) {}

  /**
   * One memory.
   *
   * @param fills without gaps from the start of the range; OVER ones may stand behind its end
   * @param measured false where the file does not say what it takes here
   */
  public record Bank(String name, Range range, List<Fill> fills, boolean measured) {
    public Bank {
      fills = List.copyOf(fills);
    }

    /** Bytes taken by the bootloader, program or variables. */
    public long usedBytes() {
      return fills.stream()
          .filter(f -> f.kind() != Kind.FREE && f.kind() != Kind.STACK_ROOM)
          .mapToLong(f -> f.range().size())
          .sum();
    }
  }

  static MemoryPicture of(Examination e) {
    List<Bank> banks = new ArrayList<>();
    banks.add(flash(e));
    e.chip().ram().forEach(b -> banks.add(ram(e, b)));
    return new MemoryPicture(banks);
  }

  private static Bank flash(Examination e) {
    Range all = e.chip().flash();
    List<Fill> fills = new ArrayList<>();
    Range start = new Range(all.start(), Math.min(e.programStart(), all.end()));
    Range end = new Range(Math.max(all.start(), all.end() - e.loader().endBytes()), all.end());
    add(fills, Kind.BOOTLOADER, start, "bootloader");
    for (Segment s : e.image().contents().segments()) {
      if (s.range().overlaps(all) || s.address() == all.end()) {
        long in = Math.min(s.range().end(), all.end());
        add(fills, Kind.PROGRAM, new Range(Math.min(s.address(), in), in), "program");
        add(fills, Kind.OVER, new Range(in, s.range().end()), "over the end");
      }
    }
    add(fills, Kind.BOOTLOADER, end, "bootloader");
    return new Bank("flash", all, withoutGaps(fills, all), true);
  }

  private static Bank ram(Examination e, Chip.Bank bank) {
    List<Fill> fills = new ArrayList<>();
    boolean measured = e.image().details() instanceof ImageDetails.Elf;
    if (e.image().details() instanceof ImageDetails.Elf elf) {
      for (ElfSection s : elf.sections()) {
        long at = RamCheck.address(e, s);
        boolean here = bank.range().contains(at);
        if (here && (e.chip().core() != Core.AVR || s.address() >= AvrProgram.DATA_SPACE)) {
          long in = Math.min(at + s.size(), bank.range().end());
          Kind kind = s.stored() ? Kind.VARIABLES : Kind.CLEARED;
          add(fills, kind, new Range(at, in), s.name());
          add(fills, Kind.OVER, new Range(in, at + s.size()), s.name());
        }
      }
    }
    long top = e.chip().core().cortexM() ? e.vector(0).orElse(0) : 0;
    long high = fills.stream().mapToLong(f -> f.range().end()).max().orElse(bank.range().start());
    if (top > high && top <= bank.range().end()) {
      add(fills, Kind.STACK_ROOM, new Range(high, top), "room for the stack");
    }
    return new Bank(bank.name(), bank.range(), withoutGaps(fills, bank.range()), measured);
  }

  private static void add(List<Fill> fills, Kind kind, Range range, String label) {
    if (range.size() > 0) {
      fills.add(new Fill(kind, range, label));
    }
  }

  /** Sorted, overlaps cut from the later one, gaps filled with FREE. */
  private static List<Fill> withoutGaps(List<Fill> fills, Range all) {
    List<Fill> sorted = new ArrayList<>(fills);
    sorted.sort(Comparator.comparingLong((Fill f) -> f.range().start()));
    List<Fill> out = new ArrayList<>();
    long at = all.start();
    for (Fill f : sorted) {
      if (f.range().start() > at) {
        out.add(new Fill(Kind.FREE, new Range(at, f.range().start()), "free"));
        at = f.range().start();
      }
      if (f.range().end() > at) {
        out.add(new Fill(f.kind(), new Range(at, f.range().end()), f.label()));
        at = f.range().end();
      }
    }
    if (at < all.end()) {
      out.add(new Fill(Kind.FREE, new Range(at, all.end()), "free"));
    }
    return out;
  }
}

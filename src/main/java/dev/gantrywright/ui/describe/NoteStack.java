package dev.gantrywright.ui.describe;

import java.util.ArrayList;
import java.util.List;

/**
 * Places notes one below the other as near to the lines they speak of as their heights allow. Notes
 * that push each other share the displacement evenly, as blocks that meet and move together.
 */
public final class NoteStack {
  private NoteStack() {}

  /**
   * @param wanted where each note would stand if it were alone, from the top, in order
   * @param heights heights of the notes
   * @param gap least space between two
   * @param top highest place taken
   * @return where each stands; ordered, apart by {@code gap}, none above {@code top}
   */
  public static double[] place(double[] wanted, double[] heights, double gap, double top) {
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < wanted.length; i++) {
      Block block = new Block(i, 1, heights[i], wanted[i]);
      while (!blocks.isEmpty() && last(blocks).end(top) + gap > block.start(top)) {
        block = blocks.remove(blocks.size() - 1).joined(block, gap);
      }
      blocks.add(block);
    }
    double[] places = new double[wanted.length];
    for (Block block : blocks) {
      double y = block.start(top);
      for (int i = block.first(); i < block.first() + block.count(); i++) {
        places[i] = y;
        y += heights[i] + gap;
      }
    }
    return places;
  }

  private static Block last(List<Block> blocks) {
    return blocks.get(blocks.size() - 1);
  }

  /** Notes that touch; {@code ideal} is the mean of where its notes would have its top. */
  private record Block(int first, int count, double height, double ideal) {
    double start(double top) {
      return Math.max(top, ideal);
    }

    double end(double top) {
      return start(top) + height;
    }

    Block joined(Block below, double gap) {
      double shifted = below.ideal - height - gap;
      double mean = (ideal * count + shifted * below.count) / (count + below.count);
      return new Block(first, count + below.count, height + gap + below.height, mean);
    }
  }
}

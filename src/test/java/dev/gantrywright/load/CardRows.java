package dev.gantrywright.load;

import dev.gantrywright.reference.GroupRows;
import dev.gantrywright.reference.HandbookRow;
import dev.gantrywright.reference.Use;

/** Group 14: FAT volumes and cards. */
public final class CardRows extends GroupRows {
  public CardRows() {
    super("G14_fat_sd");
    formula("fat_type", FatVolume.class, r -> FatVolume.bits((long) r.number("clusters")));
    formula("pow2m1", FatVolume.class, r -> FatVolume.LARGEST_FILE);
    formula(
        "fat_vol",
        FatVolume.class,
        r -> FatVolume.bytes((long) r.number("clusters"), (long) r.number("cluster_bytes")));
    formula("is83", ShortName.class, r -> ShortName.valid(r.text("name")) ? 1 : 0);
  }

  @Override
  protected Use fact(HandbookRow row) {
    if (row.quantity().equals("short name entry length")) {
      return Use.number(ShortName.ENTRY_BYTES, ShortName.class);
    }
    return Use.none("the program reads the file system from the system and keeps no such table");
  }
}

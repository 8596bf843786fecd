package dev.gantrywright.link.serial;

import dev.gantrywright.link.UsbIdentity;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a USB vendor and product number probably stand for, from {@code usb-chips.json}. */
public final class UsbChips {
  /**
   * One row.
   *
   * @param vendor USB vendor number
   * @param product USB product number; -1 for any
   * @param what for the user
   * @param source where that is written
   */
  public record Row(int vendor, int product, String what, String source) {}

  private final List<Row> rows;

  private UsbChips(List<Row> rows) {
    this.rows = rows;
  }

  /** The table that ships with the program. */
  public static UsbChips standard() {
    try (InputStream in = UsbChips.class.getResourceAsStream("usb-chips.json")) {
      JsonNode tree = JsonMapper.builder().build().readTree(in);
      return new UsbChips(tree.path("rows").valueStream().map(UsbChips::row).toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Row row(JsonNode n) {
    JsonNode product = n.path("product");
    return new Row(
        Integer.parseInt(n.path("vendor").asString(), 16),
        product.isMissingNode() ? -1 : Integer.parseInt(product.asString(), 16),
        n.path("what").asString(),
        n.path("source").asString());
  }

  public List<Row> rows() {
    return rows;
  }

  /** The best row: one with the product number before one for the whole vendor. */
  public Optional<Row> find(UsbIdentity usb) {
    Optional<Row> exact =
        rows.stream()
            .filter(r -> r.vendor() == usb.vendor() && r.product() == usb.product())
            .findFirst();
    return exact.isPresent()
        ? exact
        : rows.stream().filter(r -> r.vendor() == usb.vendor() && r.product() < 0).findFirst();
  }
}

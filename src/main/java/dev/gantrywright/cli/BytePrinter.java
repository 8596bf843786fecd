package dev.gantrywright.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** Prints text in a character set, and bytes as they are: a diff must not be recoded. */
public final class BytePrinter extends PrintWriter {
  private final OutputStream stream;
  private final Charset charset;

  public BytePrinter(OutputStream stream, Charset charset) {
    super(new ShownWriter(new OutputStreamWriter(stream, charset)), true);
    this.stream = stream;
    this.charset = charset;
  }

  /** Prints bytes unchanged where the printer can, else as the text that they most likely are. */
  static void print(PrintWriter out, byte[] bytes) {
    if (out instanceof BytePrinter printer) {
      try {
        out.flush();
        printer.stream.write(bytes);
        printer.stream.flush();
      } catch (IOException closed) {
        throw new UncheckedIOException(closed);
      }
    } else {
      out.print(text(bytes));
    }
  }

  /** A text in UTF-8 as {@link #print} takes it, in the printer's character set. */
  static byte[] recoded(PrintWriter out, byte[] utf8) {
    return out instanceof BytePrinter printer && !printer.charset.equals(StandardCharsets.UTF_8)
        ? new String(utf8, StandardCharsets.UTF_8).getBytes(printer.charset)
        : utf8;
  }

  /** The bytes as UTF-8, or as ISO-8859-1 where they are not that. */
  static String text(byte[] bytes) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException notUtf8) {
      return new String(bytes, StandardCharsets.ISO_8859_1);
    }
  }
}

package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import org.junit.jupiter.api.Test;

class IoReasonTest {
  @Test
  void saysWhyAndNotOnlyWhere() {
    assertThat(IoReason.of(new NoSuchFileException("nest.h"))).isEqualTo("no such file or folder");
    assertThat(IoReason.of(new AccessDeniedException("nest.h"))).isEqualTo("permission denied");
    assertThat(IoReason.of(new MalformedInputException(1))).isEqualTo("it is no UTF-8 text");
    assertThat(IoReason.of(new FileSystemException("nest.h", null, "No space left on device")))
        .isEqualTo("No space left on device");
    assertThat(IoReason.of(new IOException("Input/output error"))).isEqualTo("Input/output error");
    assertThat(IoReason.of(new IOException())).isEqualTo("IOException");
  }
}

package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.lang.management.ManagementFactory;
import javax.management.ObjectName;
import org.junit.jupiter.api.Test;

class ShortRunTest {
  @Test
  void theVirtualMachineTakesTheDirective() throws Exception {
    assumeTrue(
        System.getProperty("java.vm.name").contains("HotSpot")
            || System.getProperty("java.vm.name").contains("OpenJDK"),
        "only HotSpot is known to take compiler directives");
    try {
      assertThat(ShortRun.direct()).isEqualTo("1 compiler directives added");
    } finally {
      ManagementFactory.getPlatformMBeanServer()
          .invoke(
              new ObjectName("com.sun.management:type=DiagnosticCommand"),
              "compilerDirectivesClear",
              null,
              null);
    }
  }
}

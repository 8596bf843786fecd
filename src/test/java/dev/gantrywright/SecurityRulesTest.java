package dev.gantrywright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMembers;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What no code of the program may do, see docs/threats.md. */
class SecurityRulesTest {
  private static final Path SOURCES = Path.of("src/main/java");

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("dev.gantrywright");

  @Test
  void nothingIsDeserialisedByTheNameOfItsClass() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.io.ObjectInputStream")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.beans.XMLDecoder")
        .orShould()
        .dependOnClassesThat()
        .resideInAPackage("tools.jackson.databind.jsontype..")
        .because("a file must not choose which class is made of it")
        .check(CLASSES);
    for (String annotation :
        List.of(
            "com.fasterxml.jackson.annotation.JsonTypeInfo",
            "tools.jackson.databind.annotation.JsonTypeResolver",
            "tools.jackson.databind.annotation.JsonTypeIdResolver")) {
      noClasses().should().beAnnotatedWith(annotation).check(CLASSES);
      noMembers().should().beAnnotatedWith(annotation).check(CLASSES);
    }
  }

  @Test
  void noTextNamesAClassToLoad() {
    // The exception loads ahead what a list of its own names, and makes nothing of it.
    noClasses()
        .that()
        .doNotHaveFullyQualifiedName("dev.gantrywright.ui.WarmUp")
        .should()
        .callMethodWhere(
            called("java.lang.Class", "forName").or(called("java.lang.ClassLoader", "loadClass")))
        .orShould()
        .dependOnClassesThat()
        .resideInAnyPackage("javax.script..", "javax.naming..", "java.rmi..")
        .check(CLASSES);
  }

  @Test
  void commandsAreWordsAndStartInOnePlace() {
    noClasses()
        .should()
        .callMethodWhere(called("java.lang.Runtime", "exec"))
        .because("it cuts a line at blanks; ProcessBuilder takes words")
        .check(CLASSES);
    noClasses()
        .that()
        .doNotHaveFullyQualifiedName("dev.gantrywright.build.ProcessTree")
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.lang.ProcessBuilder")
        .because("the one place that starts a command takes words as they are")
        .check(CLASSES);
  }

  @Test
  void onlyTheUsersOwnShellLineMeetsAShell() throws IOException {
    Pattern shell = Pattern.compile("\"(?:/bin/)?(?:ba|da|z)?sh\"|cmd\\.exe|\"/c\"|powershell");
    List<String> found = new ArrayList<>();
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
        if (shell.matcher(Files.readString(file)).find()) {
          found.add(SOURCES.relativize(file).toString().replace('\\', '/'));
        }
      }
    }
    assertThat(found).containsExactly("dev/gantrywright/build/Shell.java");
    noClasses()
        .that()
        .resideOutsideOfPackage("dev.gantrywright.build")
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("dev.gantrywright.build.Shell")
        .because("no verb and no view runs a shell line")
        .check(CLASSES);
  }

  @Test
  void onlyThePracticeBoardListens() {
    noClasses()
        .that()
        .doNotHaveFullyQualifiedName("dev.gantrywright.link.practice.PracticeServer")
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.net.ServerSocket")
        .because("it listens on loopback only, and nothing else is open to a network")
        .check(CLASSES);
  }

  private static DescribedPredicate<JavaCall<?>> called(String owner, String name) {
    return DescribedPredicate.describe(
        owner + "." + name,
        call ->
            call.getTarget().getName().equals(name)
                && call.getTarget().getOwner().getFullName().equals(owner));
  }
}

package dev.gantrywright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the arrows between packages: each may import only what stands beside it here. */
class ArchitectureTest {
  private static final String BASE = "dev.gantrywright";

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages(BASE);

  private static final Set<String> BELOW_REPORT =
      Set.of(
          "rules", "patch", "names", "header", "image", "build", "load", "link", "prove", "physics",
          "catalog", "machine", "record");

  private static final Map<String, Set<String>> ARROWS = arrows();

  private static Map<String, Set<String>> arrows() {
    Map<String, Set<String>> may = new LinkedHashMap<>();
    may.put("report", BELOW_REPORT);
    may.put("app", with(BELOW_REPORT, "report"));
    may.put("cli", with(BELOW_REPORT, "report", "app"));
    may.put("ui", with(BELOW_REPORT, "report", "app", "cli"));
    may.put("rules", Set.of("machine", "catalog", "header", "names", "physics"));
    may.put("patch", Set.of("header", "names", "machine"));
    may.put("names", Set.of("header", "machine"));
    may.put("image", Set.of("catalog"));
    may.put("prove", Set.of("link", "machine"));
    may.put("record", Set.of("machine"));
    for (String leaf :
        List.of("header", "build", "load", "link", "physics", "catalog", "machine")) {
      may.put(leaf, Set.of());
    }
    return may;
  }

  private static Set<String> with(Set<String> base, String... more) {
    return Stream.concat(base.stream(), Stream.of(more))
        .collect(java.util.stream.Collectors.toUnmodifiableSet());
  }

  static Stream<String> packages() {
    return ARROWS.keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("packages")
  void importsOnlyWhatTheDesignAllows(String name) {
    Set<String> allowed = ARROWS.get(name);
    DescribedPredicate<JavaClass> forbidden =
        DescribedPredicate.describe(
            "stand outside " + allowed,
            other -> {
              String slice = sliceOf(other.getPackageName());
              return slice != null && !slice.equals(name) && !allowed.contains(slice);
            });
    noClasses()
        .that()
        .resideInAPackage(BASE + "." + name + "..")
        .should()
        .dependOnClassesThat(forbidden)
        .allowEmptyShould(true)
        .because("arrows between packages only point down")
        .check(CLASSES);
  }

  private static String sliceOf(String packageName) {
    if (packageName.equals(BASE)) {
      return "(entry point)";
    }
    if (!packageName.startsWith(BASE + ".")) {
      return null;
    }
    String rest = packageName.substring(BASE.length() + 1);
    int dot = rest.indexOf('.');
    return dot < 0 ? rest : rest.substring(0, dot);
  }

  @Test
  void onlyTheWindowKnowsJavaFx() {
    noClasses()
        .that()
        .resideOutsideOfPackage(BASE + ".ui..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("javafx..", "atlantafx..")
        .because("the core must run where there is no display")
        .check(CLASSES);
  }

  @Test
  void packagesFormNoCycle() {
    slices()
        .matching(BASE + ".(*)..")
        .should()
        .beFreeOfCycles()
        .allowEmptyShould(true)
        .check(CLASSES);
  }
}

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/**
 * Makes the application image in {@code target/app}: a trimmed runtime, a launcher for the window and
 * one for the command line, class-data archives for a quick start; and a deb where it is asked for
 * and the tools are there. Run by {@code mvn -Papp package}; takes the version and what to make.
 */
public final class Package {
  private static final String MODULES =
      "java.base,java.desktop,java.sql,jdk.charsets,jdk.jfr,jdk.unsupported,jdk.zipfs";
  private static final Path TARGET = Path.of("target").toAbsolutePath();
  private static final Path OUT = TARGET.resolve("app");
  private static final Path PACKAGING = Path.of("src/main/packaging").toAbsolutePath();
  private static final boolean LINUX =
      System.getProperty("os.name").toLowerCase(Locale.ROOT).contains("linux");

  private Package() {}

  public static void main(String[] args) throws Exception {
    String version = args[0];
    delete(OUT);
    Path input = OUT.resolve("input");
    copy(TARGET.resolve("gantrywright.jar"), input.resolve("gantrywright.jar"));
    copy(TARGET.resolve("lib"), input.resolve("lib"));
    jpackage(image(version, input));
    Path image = OUT.resolve("Gantrywright");
    Path app = application(image);
    archives(image, app);
    delete(input);
    System.out.printf(Locale.ROOT, "%s: %.1f MB%n", image, bytes(image) / 1e6);
    if (args.length > 1 && args[1].equals("deb")) {
      deb(version, image);
    }
  }

  private static List<String> image(String version, Path input) {
    List<String> words =
        new ArrayList<>(
            List.of(
                "--type", "app-image",
                "--name", "Gantrywright",
                "--app-version", version,
                "--dest", OUT.toString(),
                "--input", input.toString(),
                "--main-jar", "gantrywright.jar",
                "--main-class", "dev.gantrywright.Gantrywright",
                "--add-modules", MODULES,
                "--jlink-options", "--strip-debug --no-header-files --no-man-pages --compress=2",
                "--java-options", "-XX:+UseSerialGC",
                "--java-options", "-Xmn256m",
                "--java-options", "-XX:MetaspaceSize=128m",
                "--java-options", "-Xshare:auto",
                "--java-options", "-Xlog:disable",
                "--java-options", "-Xlog:all=error:stderr",
                "--java-options", "-XX:SharedArchiveFile=$APPDIR/window.jsa",
                "--add-launcher", "gantrywright-cli=" + PACKAGING.resolve("cli.properties")));
    if (LINUX) {
      words.addAll(List.of("--icon", PACKAGING.resolve("gantrywright.png").toString()));
    }
    return words;
  }

  /** The folder of jars inside the image; it differs from system to system. */
  private static Path application(Path image) throws IOException {
    try (Stream<Path> all = Files.walk(image)) {
      return all.filter(path -> path.endsWith("gantrywright.jar")).findFirst().orElseThrow()
          .getParent();
    }
  }

  /** What the launchers load at their start, laid out once so that they need not do it again. */
  private static void archives(Path image, Path app) throws Exception {
    Path java;
    try (Stream<Path> all = Files.walk(image)) {
      java =
          all.filter(path -> path.getFileName().toString().matches("java(\\.exe)?"))
              .filter(Files::isRegularFile)
              .findFirst()
              .orElseThrow();
    }
    run(60, List.of(java.toString(), "-Xshare:dump"));
    List<String> jars = new ArrayList<>();
    for (String line : Files.readAllLines(app.resolve("Gantrywright.cfg"))) {
      if (line.startsWith("app.classpath=")) {
        String path = line.substring("app.classpath=".length());
        jars.add(path.replace("$APPDIR", app.toString()).strip());
      }
    }
    String classPath = String.join(System.getProperty("path.separator"), jars);
    List<String> common =
        List.of(java.toString(), "-XX:+UseSerialGC", "-cp", classPath);
    List<String> cli = new ArrayList<>(common);
    cli.add(1, "-XX:TieredStopAtLevel=1");
    cli.add(1, "-XX:ArchiveClassesAtExit=" + app.resolve("cli.jsa"));
    Path demo = Path.of("demo-profiles/sandpiper.printer.json").toAbsolutePath();
    cli.addAll(List.of("dev.gantrywright.Gantrywright", "check", demo.toString()));
    run(60, cli);
    List<String> window = new ArrayList<>(common);
    window.add(1, "-XX:ArchiveClassesAtExit=" + app.resolve("window.jsa"));
    window.add("dev.gantrywright.Gantrywright");
    // With a display the window opens and is ended; without one the same job runs in the terminal.
    run(25, window);
  }

  /** Runs a program of ours and ends it politely when it has not ended by itself. */
  private static void run(int seconds, List<String> words) throws Exception {
    ProcessBuilder builder = new ProcessBuilder(words).redirectErrorStream(true);
    builder.redirectOutput(OUT.resolve("archive.log").toFile());
    Process process = builder.start();
    if (!process.waitFor(seconds, TimeUnit.SECONDS)) {
      process.destroy();
      process.waitFor(30, TimeUnit.SECONDS);
    }
  }

  private static void deb(String version, Path image) {
    if (!LINUX || !onPath("dpkg-deb") || !onPath("fakeroot")) {
      System.out.println("no deb: it needs Linux with dpkg-deb and fakeroot");
      return;
    }
    jpackage(
        List.of(
            "--type", "deb",
            "--name", "gantrywright",
            "--app-version", version,
            "--app-image", image.toString(),
            "--dest", OUT.toString(),
            "--file-associations", PACKAGING.resolve("printer.properties").toString(),
            "--resource-dir", PACKAGING.resolve("deb").toString(),
            "--linux-package-deps", "libgtk-3-0, libgl1, libxtst6",
            "--linux-shortcut",
            "--linux-menu-group", "Engineering",
            "--description", "Brings a 3D printer's controller board to proven firmware settings"));
    System.out.println(OUT.resolve("gantrywright_" + version + "-1_amd64.deb"));
  }

  private static boolean onPath(String program) {
    return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(":"))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
  }

  private static void jpackage(List<String> words) {
    ToolProvider tool =
        ToolProvider.findFirst("jpackage")
            .orElseThrow(() -> new IllegalStateException("this JDK has no jpackage"));
    int status = tool.run(System.out, System.err, words.toArray(String[]::new));
    if (status != 0) {
      throw new IllegalStateException("jpackage ended with " + status);
    }
  }

  private static long bytes(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      long sum = 0;
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        sum += Files.size(file);
      }
      return sum;
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path path : all.toList()) {
        Path target = to.resolve(from.relativize(path).toString());
        if (Files.isDirectory(path)) {
          Files.createDirectories(target);
        } else {
          Files.createDirectories(target.getParent());
          Files.copy(path, target, StandardCopyOption.REPLACE_EXISTING);
        }
      }
    }
  }

  private static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}

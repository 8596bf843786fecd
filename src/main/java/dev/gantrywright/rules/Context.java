package dev.gantrywright.rules;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.catalog.DriverIc;
import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.machine.Axis;
import dev.gantrywright.machine.BoardInput;
import dev.gantrywright.machine.BoardPort;
import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.DriverSocket;
import dev.gantrywright.machine.Endstop;
import dev.gantrywright.machine.Heater;
import dev.gantrywright.machine.HeaterOutput;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.SensorInput;
import dev.gantrywright.names.BoardConstant;
import dev.gantrywright.names.BuildTarget;
import dev.gantrywright.names.NameMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** What a rule sees: the input, and the facts that several rules derive from it. */
public final class Context {
  /** From here on a voltage can kill: IEC 61140, limit of extra-low AC voltage, V. */
  public static final double MAINS_VOLTS = 50;

  private final CheckInput input;
  private final Optional<Mcu> mcu;
  private final Map<Class<?>, Object> derived = new HashMap<>();
  private final Memo memo;

  Context(CheckInput input, Memo memo) {
    this.input = input;
    this.memo = memo;
    String sheetPart = input.sheet() == null ? null : input.sheet().mcu();
    String part = sheetPart == null ? input.profile().board().mcu() : sheetPart;
    this.mcu = part == null ? Optional.empty() : memo.mcu(input.catalog(), part);
  }

  /** A fact that several rules of one family derive; worked out once a check. */
  public <T> T once(Class<T> type, Function<Context, T> make) {
    Object known = derived.get(type);
    if (known == null) {
      known = make.apply(this);
      derived.put(type, known);
    }
    return type.cast(known);
  }

  /** Whether there is a firmware folder or a name map that a rule could find fault with. */
  boolean folderOpen() {
    return input.folder() != null || input.names() != null || input.unreadFolder() != null;
  }

  /**
   * The folder as it is once the board constant of the profile is written, so that what stands
   * under another board's condition is not judged; empty where no folder is open.
   */
  public Optional<FirmwareFolder> boardFolder() {
    return input.folder() == null ? Optional.empty() : Optional.of(memo.boardFolder(input));
  }

  /**
   * A fact that follows from folder, name map and board constant alone; kept from check to check.
   * Several threads may use it at once.
   */
  public <T> T keptWithFolder(Class<T> type, Supplier<T> make) {
    return memo.derived(input, type, make);
  }

  /** The path in words. */
  String place(String path) {
    return memo.place(path);
  }

  public PrinterProfile profile() {
    return input.profile();
  }

  public Optional<BoardSheet> sheet() {
    return Optional.ofNullable(input.sheet());
  }

  public Optional<FirmwareFolder> folder() {
    return Optional.ofNullable(input.folder());
  }

  /** Why a folder that was looked for is not open; empty where it is, or none was looked for. */
  public Optional<UnreadFolder> unreadFolder() {
    return Optional.ofNullable(input.unreadFolder());
  }

  public Optional<NameMap> names() {
    return Optional.ofNullable(input.names());
  }

  public Catalog catalog() {
    return input.catalog();
  }

  /** The part that the sheet names, or else the profile; empty where the catalogue lacks it. */
  public Optional<Mcu> mcu() {
    return mcu;
  }

  /** The part of that number, as {@link Catalog#mcu} finds it. */
  public Optional<Mcu> mcu(String number) {
    return memo.mcu(input.catalog(), number);
  }

  /** The board's name as people call it. */
  public String boardName() {
    return input.sheet() == null || input.sheet().name() == null ? "board" : input.sheet().name();
  }

  /** The board's port with the firmware's index. */
  public Optional<BoardPort> port(Integer index) {
    if (index != null && input.sheet() != null) {
      for (BoardPort port : input.sheet().ports()) {
        if (index.equals(port.index())) {
          return Optional.of(port);
        }
      }
    }
    return Optional.empty();
  }

  /** The ports that reach a connector. */
  public List<BoardPort> routedPorts() {
    return input.sheet() == null
        ? List.of()
        : input.sheet().ports().stream()
            .filter(port -> !Boolean.FALSE.equals(port.routed()) && port.index() != null)
            .toList();
  }

  /** The endstop input that the endstop is plugged into. */
  public Optional<BoardInput> input(Endstop endstop) {
    return input.sheet() == null || endstop.pin() == null
        ? Optional.empty()
        : Optional.ofNullable(input.sheet().inputs().get(endstop.pin()));
  }

  /** The driver socket of an axis: the one it names, or the one that bears its name. */
  public Optional<DriverSocket> socket(String name, Axis axis) {
    if (input.sheet() == null) {
      return Optional.empty();
    }
    String wanted = axis.driver().socket() == null ? name : axis.driver().socket();
    for (Map.Entry<String, DriverSocket> socket : input.sheet().sockets().entrySet()) {
      if (socket.getKey().equalsIgnoreCase(wanted)) {
        return Optional.of(socket.getValue());
      }
    }
    return Optional.empty();
  }

  /** The output that switches a heater. */
  public Optional<HeaterOutput> output(Heater heater) {
    return input.sheet() == null || heater.output() == null
        ? Optional.empty()
        : Optional.ofNullable(input.sheet().outputs().get(heater.output()));
  }

  /** The input that reads a heater's sensor. */
  public Optional<SensorInput> sensorInput(Heater heater) {
    return input.sheet() == null || heater.input() == null
        ? Optional.empty()
        : Optional.ofNullable(input.sheet().sensors().get(heater.input()));
  }

  /** The driver IC of an axis. */
  public Optional<DriverIc> driver(Axis axis) {
    String ic = axis.driver().ic();
    return ic == null ? Optional.empty() : memo.driver(input.catalog(), ic);
  }

  /** Level of the board's inputs, V; empty where neither sheet nor catalogue says. */
  public Optional<Double> logicVolts() {
    if (input.sheet() != null && input.sheet().supply().logicVolts() != null) {
      return Optional.of(input.sheet().supply().logicVolts());
    }
    return mcu.map(Mcu::ioVolts);
  }

  /** The part's number as the sheet writes it, or else the profile. */
  public Optional<String> partName() {
    String fromSheet = input.sheet() == null ? null : input.sheet().mcu();
    return Optional.ofNullable(fromSheet == null ? input.profile().board().mcu() : fromSheet);
  }

  /** Whether two spellings mean one part; package letters do not count. */
  public boolean samePart(String a, String b) {
    if (a.equalsIgnoreCase(b)) {
      return true;
    }
    Optional<Mcu> first = mcu(a);
    return first.isPresent() && first.equals(mcu(b));
  }

  /** Bytes that the loader keeps at the start of flash; 0 where the sheet does not say. */
  public long loaderOffset() {
    Long offset = input.sheet() == null ? null : input.sheet().loader().offset();
    return offset == null ? 0 : offset;
  }

  /** Bytes of flash that the loader keeps at its start and at its end. */
  public long loaderBytes() {
    Long end = input.sheet() == null ? null : input.sheet().loader().bootSection();
    return loaderOffset() + (end == null ? 0 : end);
  }

  /** The boards that the firmware folder knows. */
  public List<BoardConstant> boards() {
    return input.names() == null ? List.of() : input.names().boards();
  }

  /** Their constants. */
  public List<String> boardConstants() {
    return boards().stream().map(BoardConstant::constant).toList();
  }

  /** The build targets that the firmware folder lists. */
  public List<String> targetNames() {
    return targets().stream().map(BuildTarget::name).toList();
  }

  /** The part that a target builds for; empty where the folder does not say. */
  public Optional<String> targetPart(String target) {
    return targets().stream()
        .filter(known -> known.name().equals(target) && known.mcu() != null)
        .map(BuildTarget::mcu)
        .findFirst();
  }

  /** The targets that build for a part. */
  public List<String> targetsFor(String part) {
    return targets().stream()
        .filter(target -> target.mcu() != null && samePart(target.mcu(), part))
        .map(BuildTarget::name)
        .toList();
  }

  private List<BuildTarget> targets() {
    return input.names() == null ? List.of() : input.names().targets();
  }
}

package dev.gantrywright.cli;

import dev.gantrywright.app.PortMemory;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.link.serial.PortList;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What a verb that talks to a machine keeps in the profile because the user said so. */
final class KeptInProfile {
  private KeptInProfile() {}

  /** The profile with the reported names that were given, saved. */
  static PrinterProfile endstops(LineOptions options, PrinterProfile profile) {
    if (options.endstops.isEmpty()) {
      return profile;
    }
    Map<String, String> names = new LinkedHashMap<>(profile.link().endstopNames());
    options.endstops.forEach(
        (name, end) -> {
          if (!profile.endstops().containsKey(end)) {
            throw new UsageProblem(
                "--endstop "
                    + name
                    + "="
                    + end
                    + ": the profile has no endstop '"
                    + end
                    + "'; it has "
                    + String.join(", ", profile.endstops().keySet()));
          }
          names.put(name, end);
        });
    return saved(options, profile, "link.endstopNames", names);
  }

  /** Keeps the USB identity of the port. */
  static void port(LineOptions options, PrinterProfile profile, PortAddress address) {
    Optional<String> identity = PortMemory.toKeep(address, PortList.system());
    if (identity.isEmpty()) {
      throw new UsageProblem(
          "--remember: " + address + " is no USB port of this computer; nothing was kept");
    }
    saved(options, profile, PortMemory.PATH, identity.get());
  }

  private static PrinterProfile saved(
      LineOptions options, PrinterProfile profile, String path, Object value) {
    try {
      PrinterProfile changed = ProfileValues.with(profile, path, value);
      if (!changed.equals(profile)) {
        ProfileStore.save(changed, options.profile);
      }
      return changed;
    } catch (ProfileProblem e) {
      throw new UsageProblem(e.getMessage(), e);
    } catch (IOException e) {
      throw new DeviceProblem(options.profile + " cannot be written: " + e.getMessage(), e);
    }
  }
}

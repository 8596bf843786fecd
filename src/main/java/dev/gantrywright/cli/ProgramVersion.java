package dev.gantrywright.cli;

import picocli.CommandLine.IVersionProvider;

/** The version that the jar's manifest carries. */
final class ProgramVersion implements IVersionProvider {
  @Override
  public String[] getVersion() {
    String version = ProgramVersion.class.getPackage().getImplementationVersion();
    return new String[] {"gantrywright " + (version == null ? "(unpackaged)" : version)};
  }
}

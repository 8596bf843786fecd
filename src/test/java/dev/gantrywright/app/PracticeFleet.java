package dev.gantrywright.app;

import dev.gantrywright.link.PortAddress;
import dev.gantrywright.link.practice.Fault;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.link.practice.PracticeServer;
import dev.gantrywright.link.practice.Wire;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.prove.PracticeMachine;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Practice boards, each on its own RFC 2217 port of loopback. */
final class PracticeFleet implements AutoCloseable {
  private final List<PracticeServer> servers = new ArrayList<>();

  static PrinterProfile profile(String name, String link) {
    String json =
        """
        {"format": 1, "name": "%s", "serial": {"baud": 115200}, "link": %s,
         "axes": {"x": {"stepsPerMm": 80, "maxSpeed": 200}, "z": {"stepsPerMm": 400}},
         "endstops": {
           "xMin": {"fitted": true, "contact": "NC", "sensor": "switch", "input": "pull-up",
                    "inverted": false},
           "zMin": {"fitted": true, "contact": "NO", "sensor": "switch", "input": "pull-up",
                    "inverted": true}}}
        """
            .formatted(name, link);
    try {
      return ProfileStore.parse(name, json.getBytes(StandardCharsets.UTF_8));
    } catch (ProfileProblem e) {
      throw new AssertionError(e);
    }
  }

  ManyProofs.Board board(String name, Fault... faults) throws IOException {
    PrinterProfile profile = profile(name, "{}");
    PracticeBoard board =
        new PracticeBoard(
            PracticeMachine.of(profile).withFaults(List.of(faults)), 1, System.nanoTime());
    PracticeServer server =
        PracticeServer.listen(0, board, Wire.ideal(), System::nanoTime, Thread::new);
    servers.add(server);
    return new ManyProofs.Board(name, profile, new PortAddress.Rfc2217("127.0.0.1", server.port()));
  }

  @Override
  public void close() throws IOException {
    for (PracticeServer server : servers) {
      server.close();
    }
  }
}

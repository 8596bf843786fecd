package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.ui.shell.RouteBar;
import dev.gantrywright.ui.state.Stage;
import dev.gantrywright.ui.state.StationState;
import dev.gantrywright.ui.state.Texts;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.text.Text;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every state that a station can have is told in words that fit, at the usual size and at twice.
 */
class RouteWordsTest {
  @TempDir Path data;

  private static List<StationState> states() {
    List<StationState> plain =
        List.of(
                "route.saved",
                "route.unsaved",
                "route.checking",
                "route.reading",
                "route.unread",
                "route.fits",
                "route.noFolder",
                "route.noNames",
                "route.written",
                "route.noCommand",
                "route.notBuilt",
                "route.built",
                "route.badImage",
                "route.buildFailed",
                "route.by.card",
                "route.by.uf2",
                "route.by.usb-dfu",
                "route.by.serial",
                "route.onCard",
                "route.loaded",
                "route.flashed",
                "route.loadFailed",
                "load.copying",
                "load.flashing",
                "route.notConnected",
                "route.agrees",
                "route.waiting")
            .stream()
            .map(StationState::open)
            .toList();
    List<StationState> filled =
        List.of(
            StationState.open("route.refused", 120, 12),
            StationState.open("route.lines", 1200),
            StationState.open("route.disagrees", "z min"),
            StationState.open("route.disagree", 3),
            StationState.open("route.before", Texts.of("route.built")),
            StationState.open("route.before", Texts.of("route.onCard")),
            StationState.open("route.before", Texts.of("route.buildFailed")));
    return java.util.stream.Stream.concat(plain.stream(), filled.stream()).toList();
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 2})
  void everyStateHasRoom(double zoom) throws Exception {
    try (OpenWindow open = new OpenWindow(data)) {
      open.heron();
      open.run(() -> open.window().rezoom(zoom));
      Set<String> cut = new LinkedHashSet<>();
      open.run(
          () -> {
            RouteBar route = (RouteBar) open.window().scene().lookup(".route");
            for (StationState state : states()) {
              route.show(Stage.LOAD, state);
              open.window().scene().getRoot().applyCss();
              open.window().scene().getRoot().layout();
              for (Node node : route.lookupAll(".station-state")) {
                Label label = (Label) node;
                if (!((Text) label.lookup(".text")).getText().equals(label.getText())) {
                  cut.add(label.getText());
                }
              }
            }
          });
      assertThat(cut).isEmpty();
    }
  }
}

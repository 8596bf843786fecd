package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each way a build or a load can stand is told on its station, with words of the bundle. */
class WorkStateTest {
  @ParameterizedTest
  @EnumSource(
      value = BuildState.Kind.class,
      mode = EnumSource.Mode.EXCLUDE,
      names = {"IDLE", "CANCELLED"})
  void aBuildIsToldInWords(BuildState.Kind kind) {
    StationState told = WorkState.of(BuildState.ended(kind, ""));
    assertThat(told.words()).isNotBlank();
    assertThat(told.brief()).isNotBlank();
  }

  @ParameterizedTest
  @EnumSource(
      value = LoadState.Kind.class,
      mode = EnumSource.Mode.EXCLUDE,
      names = {"IDLE", "UNSURE"})
  void aLoadIsToldInWords(LoadState.Kind kind) {
    StationState told = WorkState.of(LoadState.of(kind, ""));
    assertThat(told.words()).isNotBlank();
    assertThat(told.brief()).isNotBlank();
  }
}

package dev.gantrywright;

/** The entry point: a verb runs on the command line, no verb opens the window. */
public final class Gantrywright {
  private Gantrywright() {}

  public static void main(String[] args) {
    System.out.println("Gantrywright");
  }
}

package org.tugtest.report;

import java.util.List;

/** What every sheet says of its own limits. Reminders for people who already know the work. */
public final class Cautions {
  /** All of it in one line, for a margin. */
  public static final String LINE =
      "Checks the description of a loom, not the vehicle; approves nothing. Battery off before work."
          + " Pyrotechnics, over 60 V DC, brakes, steering, throttle: maker's data and a qualified"
          + " person. Local law and event rules decide.";

  /** The same in sentences. */
  public static final List<String> SENTENCES =
      List.of(
          "This sheet is a check of what the files say. It does not see the vehicle and approves"
              + " nothing.",
          "Disconnect the battery before you work on the wiring.",
          "Airbags, belt tensioners and other pyrotechnic circuits, anything above 60 V DC, and the"
              + " circuits of brakes, steering and throttle need the maker's data and a qualified"
              + " person.",
          "Local law and the rules of the event have the last word.");

  private Cautions() {}
}

package org.tugtest.rule;

/** When a rule runs. */
public enum Stage {
  /** Reports what reading the files met. */
  READING,
  /** Needs references that name something. */
  REFERENCES,
  /** Everything else. */
  HARNESS,
  /** Needs what was built and measured; does not run where only the plan is checked. */
  BUILT,
  /** After all others: what waivers did. */
  WAIVERS
}

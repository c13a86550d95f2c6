package org.tugtest.model;

/** What a bundle must be protected from. */
public enum Need implements Word {
  ABRASION,
  HEAT,
  MOISTURE
}

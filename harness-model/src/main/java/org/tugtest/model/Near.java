package org.tugtest.model;

/** What a loom must keep clear of. */
public enum Near implements Word {
  HOT,
  MOVING,
  CONTROLS,
  FUEL,
  EDGE
}

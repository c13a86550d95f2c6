package org.tugtest.check;

/** A rule that did not run, and why. */
public record NotRun(String rule, String why) {}

package org.tugtest.goal;

import java.util.ArrayList;
import java.util.List;
import org.apache.maven.plugin.logging.Log;

/** Keeps what a goal says, line by line; for tests. */
final class SaidLog implements Log {
  private final List<String> lines = new ArrayList<>();
  private final List<String> warnings = new ArrayList<>();
  private final List<String> errors = new ArrayList<>();

  /** All lines in their order. */
  List<String> lines() {
    return List.copyOf(lines);
  }

  List<String> warnings() {
    return List.copyOf(warnings);
  }

  List<String> errors() {
    return List.copyOf(errors);
  }

  private void add(List<String> to, CharSequence text) {
    lines.add(text.toString());
    to.add(text.toString());
  }

  @Override
  public void info(CharSequence content) {
    lines.add(content.toString());
  }

  @Override
  public void warn(CharSequence content) {
    add(warnings, content);
  }

  @Override
  public void error(CharSequence content) {
    add(errors, content);
  }

  @Override
  public void info(CharSequence content, Throwable error) {
    info(content);
  }

  @Override
  public void warn(CharSequence content, Throwable error) {
    warn(content);
  }

  @Override
  public void error(CharSequence content, Throwable error) {
    error(content);
  }

  @Override
  public void info(Throwable error) {
    info(String.valueOf(error));
  }

  @Override
  public void warn(Throwable error) {
    warn(String.valueOf(error));
  }

  @Override
  public void error(Throwable error) {
    error(String.valueOf(error));
  }

  @Override
  public boolean isDebugEnabled() {
    return false;
  }

  @Override
  public boolean isInfoEnabled() {
    return true;
  }

  @Override
  public boolean isWarnEnabled() {
    return true;
  }

  @Override
  public boolean isErrorEnabled() {
    return true;
  }

  @Override
  public void debug(CharSequence content) {}

  @Override
  public void debug(CharSequence content, Throwable error) {}

  @Override
  public void debug(Throwable error) {}
}

package org.tugtest.compare.entry;

import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The fields of a sort of record, read from the record itself so that none can be forgotten. */
public final class RecordShape {
  private static final ClassValue<RecordShape> SHAPES =
      new ClassValue<>() {
        @Override
        protected RecordShape computeValue(Class<?> type) {
          return new RecordShape(type);
        }
      };

  private final List<String> names;
  private final Method[] accessors;
  private final Constructor<?> constructor;

  private RecordShape(Class<?> type) {
    RecordComponent[] components = type.getRecordComponents();
    names = Arrays.stream(components).map(RecordComponent::getName).toList();
    accessors = Arrays.stream(components).map(RecordComponent::getAccessor).toArray(Method[]::new);
    try {
      constructor =
          type.getDeclaredConstructor(
              Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
    } catch (NoSuchMethodException impossible) {
      throw new IllegalStateException(type + " has no canonical constructor", impossible);
    }
  }

  /** The shape of a record. */
  public static RecordShape of(Object record) {
    return SHAPES.get(record.getClass());
  }

  /** The names of the fields, in the order of the record. */
  public List<String> names() {
    return names;
  }

  /** The value of the {@code i}-th field. */
  public @Nullable Object value(Object record, int i) {
    try {
      return accessors[i].invoke(record);
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException(names.get(i) + " cannot be read", impossible);
    }
  }

  /** A record of these values, in the order of {@link #names}. */
  public Object make(@Nullable Object[] values) {
    try {
      return constructor.newInstance(values);
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException(constructor + " cannot be called", impossible);
    }
  }
}

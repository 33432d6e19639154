package evenfall.report.log;

import evenfall.report.notation.JsonStreams;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;

/**
 * Records as JSON objects, field by field; a field that is unknown, missing, there twice or of another kind is refused. For why
 * no general mapper does this see {@link JsonStreams}.
 */
final class RecordJson {

    /** Fields that files written before they were thought of do not have: null there. */
    private static final Set<String> LATER = Set.of("corrects");

    /** Asked for anew each time, the fields of a record cost more than a file. */
    private static final ClassValue<Shape> SHAPES = new ClassValue<>() {
        @Override
        protected Shape computeValue(Class<?> type) {
            RecordComponent[] fields = type.getRecordComponents();
            Class<?>[] types =
                    Arrays.stream(fields).map(RecordComponent::getType).toArray(Class<?>[]::new);
            try {
                Constructor<?> constructor = type.getDeclaredConstructor(types);
                constructor.setAccessible(true);
                for (RecordComponent field : fields) {
                    field.getAccessor().setAccessible(true);
                }
                return new Shape(List.of(fields), constructor);
            } catch (NoSuchMethodException e) {
                throw new IllegalStateException(type + " is no record", e);
            }
        }
    };

    private RecordJson() {}

    /** The fields of a record and what makes one. */
    private record Shape(List<RecordComponent> fields, Constructor<?> constructor) {}

    /**
     * Reads a record.
     *
     * @throws tools.jackson.core.exc.StreamReadException if the text is not whole JSON
     * @throws IllegalArgumentException if it is not an object with just the record's fields
     */
    static <T> T read(String text, Class<T> type) {
        try (JsonParser in = JsonStreams.of(text)) {
            in.nextToken();
            Object read = record(in, type);
            if (in.nextToken() != null) {
                throw new IllegalArgumentException("something stands behind the object");
            }
            return type.cast(read);
        }
    }

    /** Writes a record, indented. */
    static String write(Object value) {
        return JsonStreams.text(true, out -> write(out, value));
    }

    private static Object record(JsonParser in, Class<?> type) {
        require(in.currentToken() == JsonToken.START_OBJECT, type);
        Shape shape = SHAPES.get(type);
        List<RecordComponent> fields = shape.fields();
        Object[] values = new Object[fields.size()];
        boolean[] seen = new boolean[fields.size()];
        while (in.nextToken() == JsonToken.PROPERTY_NAME) {
            int field = indexOf(fields, in.currentName());
            if (seen[field]) {
                throw new IllegalArgumentException("'" + in.currentName() + "' is there twice");
            }
            seen[field] = true;
            in.nextToken();
            values[field] = value(in, fields.get(field).getGenericType());
        }
        for (int i = 0; i < seen.length; i++) {
            if (!seen[i] && !LATER.contains(fields.get(i).getName())) {
                throw new IllegalArgumentException("'" + fields.get(i).getName() + "' is missing");
            }
        }
        return made(shape.constructor(), values);
    }

    private static int indexOf(List<RecordComponent> fields, String name) {
        for (int i = 0; i < fields.size(); i++) {
            if (fields.get(i).getName().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException("'" + name + "' is not known");
    }

    private static Object made(Constructor<?> constructor, Object[] values) {
        try {
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            throw new IllegalArgumentException(
                    constructor.getDeclaringClass().getSimpleName() + " cannot hold that", e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(constructor + " cannot be called", e);
        }
    }

    private static @Nullable Object value(JsonParser in, Type type) {
        JsonToken token = in.currentToken();
        if (token == JsonToken.VALUE_NULL) {
            require(!(type instanceof Class<?> plain && plain.isPrimitive()), type);
            return null;
        }
        if (type instanceof ParameterizedType generic) {
            return generic.getRawType() == Map.class ? map(in, generic) : list(in, generic);
        }
        Class<?> plain = (Class<?>) type;
        if (plain.isRecord()) {
            return record(in, plain);
        }
        if (plain == String.class || plain.isEnum()) {
            require(token == JsonToken.VALUE_STRING, type);
            return plain.isEnum() ? constant(in.getString(), plain) : in.getString();
        }
        if (plain == boolean.class) {
            require(token == JsonToken.VALUE_TRUE || token == JsonToken.VALUE_FALSE, type);
            return token == JsonToken.VALUE_TRUE;
        }
        if (plain == double.class || plain == Double.class) {
            require(token == JsonToken.VALUE_NUMBER_FLOAT || token == JsonToken.VALUE_NUMBER_INT, type);
            double number = in.getDoubleValue();
            require(Double.isFinite(number), type);
            return number;
        }
        require(token == JsonToken.VALUE_NUMBER_INT, type);
        if (plain == int.class || plain == Integer.class) {
            return in.getIntValue();
        }
        require(plain == long.class, type);
        return in.getLongValue();
    }

    private static Map<String, @Nullable Object> map(JsonParser in, ParameterizedType type) {
        require(in.currentToken() == JsonToken.START_OBJECT, type);
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        while (in.nextToken() == JsonToken.PROPERTY_NAME) {
            String name = in.currentName();
            in.nextToken();
            require(!map.containsKey(name), type);
            map.put(name, value(in, type.getActualTypeArguments()[1]));
        }
        return map;
    }

    private static List<@Nullable Object> list(JsonParser in, ParameterizedType type) {
        require(in.currentToken() == JsonToken.START_ARRAY, type);
        List<@Nullable Object> list = new ArrayList<>();
        while (in.nextToken() != JsonToken.END_ARRAY) {
            list.add(value(in, type.getActualTypeArguments()[0]));
        }
        return list;
    }

    private static Object constant(String code, Class<?> type) {
        return Arrays.stream(type.getEnumConstants())
                .filter(constant -> ((Enum<?>) constant).name().equalsIgnoreCase(code))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("'" + code + "' is none of " + type.getSimpleName()));
    }

    private static void require(boolean right, Type type) {
        if (!right) {
            throw new IllegalArgumentException("that is no " + type.getTypeName());
        }
    }

    private static void write(JsonGenerator out, @Nullable Object value) {
        if (value == null) {
            out.writeNull();
        } else if (value instanceof Record) {
            out.writeStartObject();
            for (RecordComponent field : SHAPES.get(value.getClass()).fields()) {
                out.writeName(field.getName());
                write(out, read(value, field));
            }
            out.writeEndObject();
        } else if (value instanceof Map<?, ?> map) {
            out.writeStartObject();
            map.forEach((name, one) -> {
                out.writeName(String.valueOf(name));
                write(out, one);
            });
            out.writeEndObject();
        } else if (value instanceof List<?> list) {
            out.writeStartArray();
            list.forEach(one -> write(out, one));
            out.writeEndArray();
        } else if (value instanceof Boolean truth) {
            out.writeBoolean(truth);
        } else if (value instanceof Integer whole) {
            out.writeNumber(whole);
        } else if (value instanceof Long whole) {
            out.writeNumber(whole);
        } else if (value instanceof Double number) {
            out.writeNumber(number);
        } else if (value instanceof Enum<?> constant) {
            out.writeString(constant.name().toLowerCase(Locale.ROOT));
        } else {
            out.writeString((String) value);
        }
    }

    private static @Nullable Object read(Object record, RecordComponent field) {
        try {
            return field.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(field + " cannot be read", e);
        }
    }
}

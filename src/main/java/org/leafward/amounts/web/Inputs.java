package org.leafward.amounts.web;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;

/**
 * The fields of a calculator's form as texts by name. A form is a record whose components
 * are texts and ticks, as Spring binds it.
 */
final class Inputs {

	private static final int LONGEST = 300;

	private Inputs() {
	}

	/**
	 * What a form asks for of what was given, in its order; what is empty is left out.
	 */
	static Map<String, String> pick(Class<? extends Record> form, Map<String, String> given) {
		Map<String, String> inputs = new LinkedHashMap<>();
		for (RecordComponent part : form.getRecordComponents()) {
			String text = given.getOrDefault(part.getName(), "").strip();
			if (text.length() > LONGEST) {
				throw new BadInput("%s has %d characters; at most %d are allowed".formatted(part.getName(),
						text.length(), LONGEST), part.getName(), "shorten it");
			}
			if (!text.isEmpty()) {
				inputs.put(part.getName(), Given.line(part.getName(), text));
			}
		}
		return inputs;
	}

	/** A form as if somebody had sent it with these fields. */
	static <R extends Record> R form(Class<R> form, Map<String, String> given) {
		RecordComponent[] parts = form.getRecordComponents();
		@Nullable Object[] values = new Object[parts.length];
		for (int i = 0; i < parts.length; i++) {
			String text = given.get(parts[i].getName());
			values[i] = (parts[i].getType() == Boolean.class) ? tick(text) : text;
		}
		return make(form, parts, values);
	}

	private static @Nullable Boolean tick(@Nullable String text) {
		return (text != null) ? Boolean.valueOf(text) : null;
	}

	/** What was given, and where nothing was, what is usual. */
	static <R extends Record> R over(Class<R> form, R given, R usual) {
		RecordComponent[] parts = form.getRecordComponents();
		@Nullable Object[] values = new Object[parts.length];
		for (int i = 0; i < parts.length; i++) {
			Object own = value(parts[i], given);
			values[i] = (own != null) ? own : value(parts[i], usual);
		}
		return make(form, parts, values);
	}

	private static @Nullable Object value(RecordComponent part, Record record) {
		try {
			return part.getAccessor().invoke(record);
		}
		catch (ReflectiveOperationException ex) {
			throw new IllegalStateException("a record gives its parts", ex);
		}
	}

	private static <R extends Record> R make(Class<R> form, RecordComponent[] parts, @Nullable Object[] values) {
		Class<?>[] types = Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new);
		try {
			return form.getDeclaredConstructor(types).newInstance(values);
		}
		catch (ReflectiveOperationException ex) {
			throw new IllegalStateException("a record is made of its parts", ex);
		}
	}

}

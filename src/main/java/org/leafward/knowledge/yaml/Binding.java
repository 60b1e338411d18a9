package org.leafward.knowledge.yaml;

import java.util.List;
import java.util.stream.Collectors;
import org.leafward.knowledge.Reading;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.json.JsonMapper;

/** Turns a checked tree into records. */
public final class Binding {

	private static final JsonMapper MAPPER = JsonMapper.builder()
		.propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
		.build();

	private Binding() {
	}

	/**
	 * Binds a document that passed its schema.
	 * @param document the document
	 * @param shape the record to bind to
	 * @param <T> the record to bind to
	 * @return the record, or the problem that prevents it
	 */
	public static <T> Reading<T> bind(YamlDocument document, Class<T> shape) {
		try {
			return new Reading<>(MAPPER.treeToValue(document.root(), shape), document.places(), List.of());
		}
		catch (JacksonException ex) {
			String path = ex.getPath()
				.stream()
				.map((step) -> "/"
						+ ((step.getPropertyName() != null) ? step.getPropertyName() : String.valueOf(step.getIndex())))
				.collect(Collectors.joining());
			return new Reading<>(null, document.places(),
					List.of(document.places()
						.problem(path, "this value can't be used: " + ex.getOriginalMessage(),
								"compare it with the other entries of its kind")));
		}
	}

}

package org.leafward.knowledge.yaml;

import com.networknt.schema.AbsoluteIri;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.knowledge.Problem;
import tools.jackson.databind.JsonNode;

/** Checks documents against one JSON Schema and says in plain words what is wrong. */
public final class SchemaCheck {

	private static final int MOST = 200;

	private static final String HOME = "https://leafward.org/";

	/** Schemas that refer to each other find each other on the class path. */
	private static final SchemaRegistry REGISTRY = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12,
			(builder) -> builder.schemas(SchemaCheck::byAddress));

	private final Schema schema;

	private SchemaCheck(Schema schema) {
		this.schema = schema;
	}

	/**
	 * Loads a schema.
	 * @param resource class path resource
	 * @return the check
	 * @throws IllegalArgumentException when there is no such resource
	 */
	public static SchemaCheck load(String resource) {
		String text = text(resource);
		if (text == null) {
			throw new IllegalArgumentException("no schema " + resource);
		}
		return new SchemaCheck(REGISTRY.getSchema(text, InputFormat.JSON));
	}

	private static @Nullable String byAddress(String address) {
		return address.startsWith(HOME) ? text(address.substring(HOME.length())) : null;
	}

	private static @Nullable String text(String resource) {
		try (InputStream stream = SchemaCheck.class.getClassLoader().getResourceAsStream(resource)) {
			return (stream != null) ? new String(stream.readAllBytes(), StandardCharsets.UTF_8) : null;
		}
		catch (IOException ex) {
			throw new UncheckedIOException(resource, ex);
		}
	}

	/**
	 * Checks a document.
	 * @param document a document with a root
	 * @return what is wrong, in the order of the file; at most 200
	 */
	public List<Problem> check(YamlDocument document) {
		JsonNode root = document.root();
		if (root == null) {
			return document.problems();
		}
		SchemaWords words = new SchemaWords(document, this::document);
		return this.schema.validate(root)
			.stream()
			.map(words::problem)
			.sorted(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column))
			.limit(MOST)
			.toList();
	}

	/** The whole schema that a keyword stands in, this one or one that it refers to. */
	private JsonNode document(SchemaLocation keyword) {
		AbsoluteIri address = keyword.getAbsoluteIri();
		return (address == null || address.equals(this.schema.getSchemaLocation().getAbsoluteIri()))
				? this.schema.getSchemaNode() : REGISTRY.getSchema(new SchemaLocation(address)).getSchemaNode();
	}

}

package org.leafward.knowledge.yaml;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leafward.knowledge.Places.Place;
import org.leafward.knowledge.Problem;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * Walks the parser's tokens and builds the tree, because the tree that Jackson builds
 * forgets positions. Aliases are never followed, so a document can't grow beyond its
 * text.
 *
 * @param file the file's name
 * @param problems gathers what is wrong
 * @param values gathers the positions of values by path
 * @param keys gathers the positions of keys by path
 */
record YamlWalk(String file, List<Problem> problems, Map<String, Place> values, Map<String, Place> keys) {

	private static final int DEEPEST = 40;

	private static final YAMLFactory FACTORY = YAMLFactory.builder()
		.streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
		.build();

	@Nullable JsonNode document(String text) {
		try (YAMLParser parser = (YAMLParser) FACTORY.createParser(ObjectReadContext.empty(), text)) {
			if (parser.nextToken() == null) {
				this.problems.add(
						new Problem(this.file, 1, 1, "", "the file is empty", "write the content, or remove the file"));
				return null;
			}
			JsonNode root = value(parser, "");
			if (parser.nextToken() != null) {
				report(parser, "", "a second document begins here", "remove the line with the three hyphens above");
			}
			return root;
		}
	}

	private JsonNode value(YAMLParser parser, String path) {
		this.values.put(path, place(parser));
		if (parser.isCurrentAlias()) {
			report(parser, path, "this refers to a value elsewhere ('*%s')".formatted(parser.getString()),
					"write the value out here");
		}
		else if (parser.getTypeId() != null) {
			report(parser, path, "tags such as '!%s' are not read".formatted(parser.getTypeId()), "remove the tag");
		}
		return switch (parser.currentToken()) {
			case START_OBJECT -> object(parser, path);
			case START_ARRAY -> array(parser, path);
			case VALUE_TRUE -> JsonNodeFactory.instance.booleanNode(true);
			case VALUE_FALSE -> JsonNodeFactory.instance.booleanNode(false);
			case VALUE_NULL -> JsonNodeFactory.instance.nullNode();
			case VALUE_NUMBER_INT -> JsonNodeFactory.instance.numberNode(parser.getBigIntegerValue());
			case VALUE_NUMBER_FLOAT -> JsonNodeFactory.instance.numberNode(parser.getDecimalValue());
			default -> JsonNodeFactory.instance.stringNode(parser.getString());
		};
	}

	private ObjectNode object(YAMLParser parser, String path) {
		ObjectNode node = JsonNodeFactory.instance.objectNode();
		while (parser.nextToken() != JsonToken.END_OBJECT) {
			String name = parser.currentName();
			String child = path + "/" + name.replace("~", "~0").replace("/", "~1");
			Place place = place(parser);
			if (node.has(name)) {
				report(parser, child, "'%s' is written twice".formatted(name),
						"keep one of them; the first is on line %d".formatted(line(child)));
			}
			this.keys.put(child, place);
			parser.nextToken();
			node.set(name, value(parser, child));
		}
		return node;
	}

	private int line(String path) {
		Place place = this.keys.get(path);
		return (place != null) ? place.line() : 0;
	}

	private ArrayNode array(YAMLParser parser, String path) {
		ArrayNode node = JsonNodeFactory.instance.arrayNode();
		while (parser.nextToken() != JsonToken.END_ARRAY) {
			node.add(value(parser, path + "/" + node.size()));
		}
		return node;
	}

	private void report(YAMLParser parser, String path, String what, String mend) {
		Place place = place(parser);
		this.problems.add(new Problem(this.file, place.line(), place.column(), path, what, mend));
	}

	private static Place place(YAMLParser parser) {
		TokenStreamLocation location = parser.currentTokenLocation();
		return new Place(Math.max(0, location.getLineNr()), Math.max(0, location.getColumnNr()));
	}

}

package org.leafward.knowledge.yaml;

import com.networknt.schema.Error;
import com.networknt.schema.SchemaLocation;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.leafward.knowledge.Problem;
import tools.jackson.databind.JsonNode;

/**
 * Puts what the validator found into plain words. A schema's descriptions are noun
 * phrases ("a temperature such as 32F"), so that they can follow "write".
 *
 * @param document the document
 * @param schemas gives the whole schema that a keyword stands in
 */
record SchemaWords(YamlDocument document, Function<SchemaLocation, JsonNode> schemas) {

	private static final Map<String, String> TYPES = Map.of("string", "text", "integer", "a whole number", "number",
			"a number", "boolean", "true or false", "array", "a list", "object", "entries of the form 'name: value'",
			"null", "nothing");

	Problem problem(Error error) {
		String path = error.getInstanceLocation().toString();
		JsonNode rule = error.getSchemaNode();
		return switch (error.getKeyword()) {
			case "required" -> missing(path, error);
			case "additionalProperties", "unevaluatedProperties" -> unknown(path, error);
			case "enum" -> at(path, "'%s' is not known here".formatted(text(error.getInstanceNode())),
					"write one of: " + list(rule));
			case "const" ->
				at(path, "'%s' is not known here".formatted(text(error.getInstanceNode())), "write " + text(rule));
			case "type" -> at(path, "%s is written where %s is wanted".formatted(found(error.getInstanceNode()),
					TYPES.getOrDefault(text(rule), text(rule))), wanted(error));
			case "pattern" ->
				at(path, "'%s' does not have the right form".formatted(text(error.getInstanceNode())), wanted(error));
			case "minLength" -> at(path, "the text is too short", wanted(error));
			case "maxLength" -> at(path, "the text has %d characters, %s are allowed"
				.formatted(error.getInstanceNode().asString("").length(), text(rule)), "shorten it");
			case "minimum", "exclusiveMinimum" -> at(path, "%s is too low".formatted(text(error.getInstanceNode())),
					"write %s or more".formatted(text(rule)));
			case "maximum", "exclusiveMaximum" -> at(path, "%s is too high".formatted(text(error.getInstanceNode())),
					"write %s or less".formatted(text(rule)));
			case "minItems" -> at(path, "the list is too short", "write at least %s".formatted(text(rule)));
			case "maxItems" -> at(path, "the list is too long", "write at most %s".formatted(text(rule)));
			case "minProperties" -> at(path, "nothing is written here", wanted(error));
			case "uniqueItems" -> at(path, "the list names something twice", "remove the repetition");
			default -> at(path, "this is not allowed: " + error.getMessage(), wanted(error));
		};
	}

	private Problem at(String path, String what, String mend) {
		return this.document.places().problem(path, what, mend);
	}

	private Problem missing(String path, Error error) {
		String name = String.valueOf(error.getProperty());
		String description = around(error).path("properties").path(name).path("description").asString("");
		return at(path, "'%s' is missing".formatted(name),
				"add '%s'".formatted(name) + (description.isEmpty() ? "" : ": " + description));
	}

	private Problem unknown(String path, Error error) {
		String name = String.valueOf(error.getProperty());
		String key = path + "/" + name.replace("~", "~0").replace("/", "~1");
		if (name.contains(" ")) {
			return this.document.keyProblem(key, "'%s' is read as the name of an entry".formatted(cut(name)),
					"put the whole text in quotes; a comma or a colon in it has split it");
		}
		List<String> known = new ArrayList<>(around(error).path("properties").propertyNames());
		String closest = known.stream().filter((candidate) -> close(candidate, name)).findFirst().orElse("");
		return this.document.keyProblem(key, "'%s' is not known here".formatted(name), closest.isEmpty()
				? "write one of: " + String.join(", ", known) : "write '%s' if that is meant".formatted(closest));
	}

	/** The schema that the violated keyword belongs to. */
	private JsonNode around(Error error) {
		String keyword = String.valueOf(error.getSchemaLocation().getFragment());
		return this.schemas.apply(error.getSchemaLocation()).at(keyword.substring(0, keyword.lastIndexOf('/')));
	}

	private String wanted(Error error) {
		String description = around(error).path("description").asString("");
		if (!description.isEmpty()) {
			return "write " + description;
		}
		String type = around(error).path("type").asString("");
		return TYPES.containsKey(type) ? "write " + TYPES.get(type) : "compare it with the other entries of its kind";
	}

	private static String found(JsonNode node) {
		if (node.isObject()) {
			return "a group of entries";
		}
		if (node.isArray()) {
			return "a list";
		}
		return (node.isNull() || text(node).isEmpty()) ? "nothing" : "'%s'".formatted(text(node));
	}

	private static String list(JsonNode values) {
		List<String> words = new ArrayList<>();
		values.forEach((value) -> words.add(text(value)));
		return String.join(", ", words);
	}

	private static String text(JsonNode node) {
		return cut(node.isValueNode() ? node.asString("") : node.toString());
	}

	private static String cut(String text) {
		return (text.length() <= 60) ? text : text.substring(0, 57) + "...";
	}

	/** Whether one name is a slip of the pen away from the other. */
	private static boolean close(String candidate, String written) {
		String a = candidate.toLowerCase(Locale.ROOT);
		String b = written.toLowerCase(Locale.ROOT).replace('_', '-');
		if (a.equals(b)) {
			return true;
		}
		int prefix = 0;
		while (prefix < Math.min(a.length(), b.length()) && a.charAt(prefix) == b.charAt(prefix)) {
			prefix++;
		}
		int suffix = 0;
		while (suffix < Math.min(a.length(), b.length()) - prefix
				&& a.charAt(a.length() - 1 - suffix) == b.charAt(b.length() - 1 - suffix)) {
			suffix++;
		}
		int differing = Math.max(a.length(), b.length()) - prefix - suffix;
		return differing <= 2 && prefix + suffix >= 2;
	}

}

package org.leafward.knowledge;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;

/** Editors show a schema's descriptions, and problems quote them. */
class SchemaTests {

	private static final Path SCHEMAS = Path.of("src/main/resources/schema");

	private static final String POINTER = "# yaml-language-server: $schema=";

	@ParameterizedTest
	@ValueSource(strings = { "plants-1.json", "rulepack-1.json", "phenology-1.json", "lookalikes-1.json" })
	void everyEntryIsDescribedAndNothingUnknownIsLetThrough(String name) throws IOException {
		JsonNode schema = JsonMapper.shared().readTree(Files.readString(SCHEMAS.resolve(name)));
		List<String> wrong = new ArrayList<>();
		int entries = walk(schema, schema, "", wrong);
		assertThat(wrong).isEmpty();
		assertThat(entries).isGreaterThan(10);
	}

	/** Counts the entries below a node and notes those without description. */
	private static int walk(JsonNode root, JsonNode node, String path, List<String> wrong) {
		int entries = 0;
		if (node.has("properties") && !node.has("additionalProperties")) {
			wrong.add(path + " lets unknown entries through");
		}
		for (String key : node.propertyNames()) {
			JsonNode child = node.get(key);
			if (path.endsWith("/properties")) {
				entries++;
				boolean here = child.path("$ref").asString("").startsWith("#");
				JsonNode target = here ? root.at(child.get("$ref").asString().substring(1)) : child;
				if (!child.has("description") && !target.has("description")) {
					wrong.add(path + "/" + key + " has no description");
				}
			}
			if (child.isObject()) {
				entries += walk(root, child, path + "/" + key, wrong);
			}
		}
		return entries;
	}

	@Test
	void everyFileTellsEditorsItsSchema() throws IOException {
		List<Path> files;
		try (Stream<Path> found = Files.walk(Path.of("config"))) {
			files = found.filter(Files::isRegularFile)
				.filter((file) -> List.of("plants", "rulepacks", "phenology", "lookalikes")
					.contains(file.getParent().getFileName().toString()))
				.toList();
		}
		assertThat(files).hasSizeGreaterThan(10).allSatisfy((file) -> {
			String first = Files.readAllLines(file).get(0);
			assertThat(first).startsWith(POINTER);
			assertThat(file.getParent().resolve(first.substring(POINTER.length()))).isRegularFile();
		});
	}

}

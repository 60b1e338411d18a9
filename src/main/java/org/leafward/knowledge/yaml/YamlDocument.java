package org.leafward.knowledge.yaml;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.Places;
import org.leafward.knowledge.Places.Place;
import org.leafward.knowledge.Problem;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.JsonNode;

/**
 * A YAML document as a tree, with the position of every key and value.
 */
public final class YamlDocument {

	private final String file;

	private final @Nullable JsonNode root;

	private final Map<String, Place> keys;

	private final Places places;

	private final List<Problem> problems;

	private YamlDocument(String file, @Nullable JsonNode root, Map<String, Place> values, Map<String, Place> keys,
			List<Problem> problems) {
		this.file = file;
		this.root = root;
		this.keys = keys;
		this.places = new Places(file, values);
		this.problems = List.copyOf(problems);
	}

	/**
	 * Parses a file.
	 * @param file the file
	 * @return the tree, or the problems that prevent one
	 */
	public static YamlDocument read(KnowledgeFile file) {
		byte[] content = file.content();
		if (content.length > KnowledgeFile.LARGEST) {
			return broken(file,
					new Problem(file.name(), 0, 0, "",
							"the file is larger than %d bytes".formatted(KnowledgeFile.LARGEST),
							"split it into several files"));
		}
		String text;
		try {
			text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(content)).toString();
		}
		catch (CharacterCodingException ex) {
			return broken(file, new Problem(file.name(), 0, 0, "", "the file is not UTF-8 text",
					"save it with the encoding UTF-8"));
		}
		List<Problem> problems = new ArrayList<>();
		YamlWalk walk = new YamlWalk(file.name(), problems, new HashMap<>(), new HashMap<>());
		JsonNode root = null;
		try {
			root = walk.document(text);
		}
		catch (JacksonException ex) {
			problems.add(unreadable(file.name(), ex));
		}
		return new YamlDocument(file.name(), root, walk.values(), walk.keys(), problems);
	}

	private static Problem unreadable(String file, JacksonException ex) {
		String mend = "look at the indentation, quotes and colons on this line and the one above";
		// Jackson names the last good place; the parser underneath knows the bad one.
		if (ex.getCause() instanceof MarkedYamlEngineException marked && marked.getProblemMark().isPresent()) {
			Mark mark = marked.getProblemMark().get();
			return new Problem(file, mark.getLine() + 1, mark.getColumn() + 1, "",
					"this is not readable as YAML: " + firstLine(marked.getProblem()), mend);
		}
		TokenStreamLocation location = ex.getLocation();
		int line = (location != null) ? Math.max(0, location.getLineNr()) : 0;
		int column = (location != null) ? Math.max(0, location.getColumnNr()) : 0;
		return new Problem(file, line, column, "",
				"this is not readable as YAML: " + firstLine(ex.getOriginalMessage()), mend);
	}

	private static String firstLine(@Nullable String text) {
		return String.valueOf(text).lines().findFirst().orElse("");
	}

	private static YamlDocument broken(KnowledgeFile file, Problem problem) {
		return new YamlDocument(file.name(), null, Map.of(), Map.of(), List.of(problem));
	}

	public @Nullable JsonNode root() {
		return this.root;
	}

	public Places places() {
		return this.places;
	}

	public List<Problem> problems() {
		return this.problems;
	}

	/**
	 * A problem with the name of an entry rather than with its value.
	 * @param path path of the entry
	 * @param what what is wrong
	 * @param mend what to write instead
	 * @return the problem at the position of the key
	 */
	Problem keyProblem(String path, String what, String mend) {
		Place place = this.keys.get(path);
		return (place != null) ? new Problem(this.file, place.line(), place.column(), path, what, mend)
				: this.places.problem(path, what, mend);
	}

}

package org.leafward.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.leafward.knowledge.yaml.Binding;
import org.leafward.knowledge.yaml.SchemaCheck;
import org.leafward.knowledge.yaml.YamlDocument;
import org.springframework.stereotype.Component;

/**
 * Reads a knowledge file: YAML, checked against a JSON Schema (draft 2020-12), bound to a
 * record whose components are named in the file with hyphens. Collects all problems
 * instead of stopping at the first.
 */
@Component
public class KnowledgeReader {

	private final Map<String, SchemaCheck> checks = new ConcurrentHashMap<>();

	/**
	 * Reads a file.
	 * @param file the file
	 * @param schema class path resource of its schema, for example
	 * {@code schema/rulepack-1.json}
	 * @param shape the record to bind to
	 * @param <T> the record to bind to
	 * @return the content or the problems
	 */
	public <T> Reading<T> read(KnowledgeFile file, String schema, Class<T> shape) {
		YamlDocument document = YamlDocument.read(file);
		List<Problem> problems = new ArrayList<>(document.problems());
		if (document.root() != null && problems.isEmpty()) {
			problems.addAll(this.checks.computeIfAbsent(schema, SchemaCheck::load).check(document));
		}
		if (document.root() == null || !problems.isEmpty()) {
			return new Reading<>(null, document.places(), problems);
		}
		return Binding.bind(document, shape);
	}

}

package org.leafward.knowledge;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;

/**
 * Finds the knowledge files of a kind: those that come with the server, and laid over
 * them, file by file, those in the operator's folder.
 */
@Component
public class KnowledgeFiles {

	private static final int MOST = 500;

	private final String directory;

	/**
	 * Creates the finder.
	 * @param directory the operator's folder, which holds a folder per kind; blank when
	 * there is none
	 */
	public KnowledgeFiles(@Value("${leafward.knowledge.directory:}") String directory) {
		this.directory = directory.strip();
	}

	/**
	 * Opens the YAML files of a kind.
	 * @param kind folder name, for example {@code rulepacks}
	 * @return by name; at most 500
	 * @throws BrokenKnowledge when the operator's folder is not there or holds too many
	 */
	public List<KnowledgeFile> of(String kind) {
		return of(kind, "yaml");
	}

	/**
	 * Opens the files of a kind.
	 * @param kind folder name, for example {@code regions}
	 * @param ending how the files' names end, without the dot
	 * @return by name; at most 500
	 * @throws BrokenKnowledge when the operator's folder is not there or holds too many
	 */
	public List<KnowledgeFile> of(String kind, String ending) {
		SortedMap<String, KnowledgeFile> files = new TreeMap<>();
		try {
			for (Resource resource : new PathMatchingResourcePatternResolver()
				.getResources("classpath*:/knowledge/" + kind + "/*." + ending)) {
				try (InputStream stream = resource.getInputStream()) {
					add(files, kind, String.valueOf(resource.getFilename()), stream);
				}
			}
			if (!this.directory.isEmpty()) {
				layOver(files, kind, ending);
			}
		}
		catch (IOException ex) {
			throw new UncheckedIOException("knowledge files of kind " + kind, ex);
		}
		return List.copyOf(files.values());
	}

	private void layOver(SortedMap<String, KnowledgeFile> files, String kind, String ending) throws IOException {
		Path root = Path.of(this.directory);
		if (!Files.isDirectory(root)) {
			throw new BrokenKnowledge(List.of(new Problem(this.directory, 0, 0, "", "there is no such folder",
					"create it, or remove leafward.knowledge.directory from the settings")));
		}
		if (!Files.isDirectory(root.resolve(kind))) {
			return;
		}
		int count = 0;
		try (DirectoryStream<Path> own = Files.newDirectoryStream(root.resolve(kind), "*." + ending)) {
			for (Path path : own) {
				count++;
				if (count > MOST) {
					throw new BrokenKnowledge(List.of(new Problem(this.directory + "/" + kind, 0, 0, "",
							"there are more than %d files".formatted(MOST), "put several into one file")));
				}
				try (InputStream stream = Files.newInputStream(path)) {
					add(files, kind, path.getFileName().toString(), stream);
				}
			}
		}
	}

	private static void add(SortedMap<String, KnowledgeFile> files, String kind, String name, InputStream stream)
			throws IOException {
		String full = kind + "/" + name;
		files.put(full, new KnowledgeFile(full, stream.readNBytes(KnowledgeFile.LARGEST + 1)));
	}

}

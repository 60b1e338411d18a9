package org.leafward.lookalikes.key;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.knowledge.Problem;
import org.leafward.knowledge.Reading;
import org.leafward.lookalikes.core.Answer;
import org.leafward.lookalikes.core.Answers;
import org.leafward.lookalikes.core.Cause;
import org.leafward.lookalikes.core.Key;
import org.leafward.lookalikes.core.Pair;
import org.leafward.lookalikes.core.Question;

/** Puts the files of config/lookalikes together into one key. */
public final class KeyReader {

	/** Folder under config. */
	public static final String FOLDER = "lookalikes";

	static final String SCHEMA = "schema/lookalikes-1.json";

	private final KnowledgeReader reader;

	private final KnownNames known;

	/**
	 * Creates the reader.
	 * @param reader reads files
	 * @param known the names of other modules that the key may use
	 */
	public KeyReader(KnowledgeReader reader, KnownNames known) {
		this.reader = reader;
		this.known = known;
	}

	/** A file that could be read, and where to complain about it. */
	private record Sheet(KeyDraft draft, Complaints complaints) {
	}

	/**
	 * Reads the files.
	 * @param files all files of the key
	 * @return the key
	 * @throws BrokenKnowledge with every problem of every file
	 */
	public Key read(List<KnowledgeFile> files) {
		List<Problem> problems = new ArrayList<>();
		List<Sheet> sheets = new ArrayList<>();
		for (KnowledgeFile file : files) {
			Reading<KeyDraft> reading = this.reader.read(file, SCHEMA, KeyDraft.class);
			problems.addAll(reading.problems());
			if (reading.value() != null) {
				sheets.add(new Sheet(reading.value(), new Complaints(reading.places())));
			}
		}
		// Names are only looked up once every file that may define them was readable.
		if (!problems.isEmpty()) {
			throw new BrokenKnowledge(problems);
		}
		Key.Scale scale = scale(sheets);
		List<Question> questions = new ArrayList<>();
		Set<String> evidences = new HashSet<>();
		sheets.forEach((sheet) -> questions(sheet, questions, evidences));
		List<Cause> causes = new ArrayList<>();
		Set<String> ids = new HashSet<>();
		sheets.forEach((sheet) -> causes(sheet, scale, evidences, causes, ids));
		List<Pair> pairs = new ArrayList<>();
		sheets.forEach((sheet) -> pairs(sheet, ids, pairs));
		sheets.forEach((sheet) -> problems.addAll(sheet.complaints.problems()));
		whole(files, scale, questions, causes, problems);
		if (!problems.isEmpty()) {
			throw new BrokenKnowledge(problems);
		}
		return new Key(KnowledgeFile.fingerprint(files, ""), causes, questions, pairs, Objects.requireNonNull(scale));
	}

	private static void whole(List<KnowledgeFile> files, Key.@Nullable Scale scale, List<Question> questions,
			List<Cause> causes, List<Problem> problems) {
		String file = files.isEmpty() ? FOLDER : files.get(0).name();
		if (scale == null) {
			problems.add(new Problem(file, 0, 0, "", "no file has a scale",
					"write scale: with typical, possible, unlikely, mistaken, unticked and damping into one of them"));
		}
		if (questions.isEmpty()) {
			problems.add(new Problem(file, 0, 0, "", "no file has questions", "write questions: into one of them"));
		}
		if (causes.size() < 2) {
			problems.add(
					new Problem(file, 0, 0, "", "there are fewer than two causes", "write at least two under causes:"));
		}
	}

	private static Key.@Nullable Scale scale(List<Sheet> sheets) {
		Key.Scale scale = null;
		for (Sheet sheet : sheets) {
			KeyDraft.ScaleDraft draft = sheet.draft.scale();
			if (draft == null) {
				continue;
			}
			if (scale != null) {
				sheet.complaints.add("/scale", "another file has a scale already", "keep one of the two");
			}
			if (!(draft.unlikely() < draft.possible() && draft.possible() < draft.typical())) {
				sheet.complaints.add("/scale", "the chances are out of order",
						"make unlikely less than possible, and possible less than typical");
			}
			scale = new Key.Scale(draft.typical(), draft.possible(), draft.unlikely(), draft.mistaken(),
					draft.unticked(), draft.damping());
		}
		return scale;
	}

	private static void questions(Sheet sheet, List<Question> questions, Set<String> evidences) {
		List<KeyDraft.QuestionDraft> drafts = CauseReader.orEmpty(sheet.draft.questions());
		for (int i = 0; i < drafts.size(); i++) {
			KeyDraft.QuestionDraft draft = drafts.get(i);
			String path = "/questions/" + i;
			if (questions.stream().anyMatch((one) -> one.id().equals(draft.id()))) {
				sheet.complaints.add(path + "/id", "there already is a question '%s'".formatted(draft.id()),
						"give this one an id of its own");
			}
			boolean several = Boolean.TRUE.equals(draft.several());
			if (!several && draft.answers().size() < 2) {
				sheet.complaints.add(path + "/answers", "one answer alone is no choice",
						"write several: true, so that it can be answered with no, or add answers");
			}
			for (int j = 0; j < draft.answers().size(); j++) {
				String id = draft.answers().get(j).id();
				if (id.equals(Answers.NONE) || id.equals(Answers.CANNOT_TELL)) {
					sheet.complaints.add(path + "/answers/" + j + "/id", "'%s' is always an answer".formatted(id),
							"leave it out");
				}
				else if (!evidences.add(id)) {
					sheet.complaints.add(path + "/answers/" + j + "/id",
							"there already is an answer '%s'".formatted(id), "give this one an id of its own");
				}
			}
			questions.add(new Question(draft.id(), draft.ask(), orBlank(draft.help()), several,
					Boolean.TRUE.equals(draft.eachTime()), draft.ease(),
					draft.answers().stream().map(KeyReader::answer).toList()));
		}
	}

	private static Answer answer(KeyDraft.AnswerDraft draft) {
		return new Answer(draft.id(), draft.say(), orBlank(draft.help()), draft.brief(), draft.usual());
	}

	private void causes(Sheet sheet, Key.@Nullable Scale scale, Set<String> evidences, List<Cause> causes,
			Set<String> ids) {
		Key.Scale weights = (scale != null) ? scale : new Key.Scale(0.6, 0.3, 0.02, 0, 0.5, 1);
		CauseReader causeReader = new CauseReader(this.known, evidences, weights, sheet.complaints);
		List<KeyDraft.CauseDraft> drafts = CauseReader.orEmpty(sheet.draft.causes());
		for (int i = 0; i < drafts.size(); i++) {
			String path = "/causes/" + i;
			if (!ids.add(drafts.get(i).id())) {
				sheet.complaints.add(path + "/id", "there already is a cause '%s'".formatted(drafts.get(i).id()),
						"give this one an id of its own");
			}
			causes.add(causeReader.read(drafts.get(i), path));
		}
	}

	private static void pairs(Sheet sheet, Set<String> causes, List<Pair> pairs) {
		List<KeyDraft.PairDraft> drafts = CauseReader.orEmpty(sheet.draft.pairs());
		for (int i = 0; i < drafts.size(); i++) {
			String one = drafts.get(i).between().get(0);
			String other = drafts.get(i).between().get(1);
			String path = "/pairs/" + i + "/between";
			for (String id : List.of(one, other)) {
				if (!causes.contains(id)) {
					sheet.complaints.add(path, "there is no cause '%s'".formatted(id), "write the ids of two causes");
				}
			}
			if (one.equals(other)) {
				sheet.complaints.add(path, "a cause can't be parted from itself", "write the ids of two causes");
			}
			if (pairs.stream().anyMatch((pair) -> pair.of(one, other))) {
				sheet.complaints.add(path, "this pair is there already", "keep one of the two");
			}
			pairs.add(new Pair(one, other, drafts.get(i).split(), drafts.get(i).by().equals("test")));
		}
	}

	private static String orBlank(@Nullable String text) {
		return (text != null) ? text : "";
	}

}

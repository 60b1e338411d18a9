package org.leafward.lookalikes.key;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A file of the key as written. Components are named like the entries of the schema
 * lookalikes-1.json, which says what they mean.
 */
record KeyDraft(String title, @Nullable ScaleDraft scale, @Nullable List<QuestionDraft> questions,
		@Nullable List<CauseDraft> causes, @Nullable List<PairDraft> pairs) {

	/** The scale as written. */
	record ScaleDraft(double typical, double possible, double unlikely, double mistaken, double unticked,
			double damping) {
	}

	/** A question as written. */
	record QuestionDraft(String id, String ask, @Nullable String help, @Nullable Boolean several,
			@Nullable Boolean eachTime, double ease, List<AnswerDraft> answers) {
	}

	/** An answer as written. */
	record AnswerDraft(String id, String say, @Nullable String help, String brief, double usual) {
	}

	/** A cause as written. */
	record CauseDraft(String id, String name, String kind, @Nullable Boolean laboratory, @Nullable Boolean regulated,
			double share, @Nullable HostsDraft hosts, String tells, String confirm, @Nullable SampleDraft sample,
			String outlook, @Nullable List<String> typical, @Nullable List<String> possible,
			@Nullable List<String> unlikely, @Nullable Map<String, Double> weights, List<RemedyDraft> remedies,
			List<SourceDraft> sources) {
	}

	/** Hosts as written. */
	record HostsDraft(@Nullable String trouble, @Nullable List<String> only, @Nullable List<String> never,
			@Nullable List<String> carries) {
	}

	/** A sample as written. */
	record SampleDraft(String what, String when, @Nullable List<Integer> months, String packing) {
	}

	/** A remedy as written. */
	record RemedyDraft(String id, String title, String work, String text, @Nullable Boolean holdOff, SpanDraft span,
			@Nullable String rule, @Nullable String caution) {
	}

	/** A span as written. */
	record SpanDraft(String anchor, int from, int to) {
	}

	/** A source as written. */
	record SourceDraft(String title, @Nullable String publisher, @Nullable String address, String trust) {
	}

	/** A pair as written. */
	record PairDraft(List<String> between, String by, String split) {
	}

}

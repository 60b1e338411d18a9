package org.leafward.reminders.web;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

/**
 * The two scripts, run by Node in a made-up browser ({@code src/test/js/check-push.mjs}).
 * A real one needs a push service, which no test has. Without Node the tests are left
 * out, except on a build server (environment variable CI is true), where they fail.
 */
class PushScriptTests {

	private static final Path SCRIPTS = Path.of("src", "main", "resources", "static", "js");

	private static List<String> run(String scene, String... more) throws Exception {
		List<String> command = new ArrayList<>(
				List.of("node", Path.of("src", "test", "js", "check-push.mjs").toString(), SCRIPTS.toString(), scene));
		command.addAll(List.of(more));
		Process node;
		try {
			node = new ProcessBuilder(command).redirectErrorStream(true).start();
		}
		catch (IOException ex) {
			return missing(ex);
		}
		String told = new String(node.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
		assertThat(node.waitFor(60, TimeUnit.SECONDS)).isTrue();
		assertThat(node.exitValue()).as(told).isZero();
		List<String> done = new ArrayList<>();
		for (JsonNode one : new JsonMapper().readTree(told)) {
			done.add(one.toString().replace("\"", ""));
		}
		return done;
	}

	private static List<String> missing(IOException trouble) {
		if ("true".equals(System.getenv("CI"))) {
			return fail("Node is not installed", trouble);
		}
		return abort("Node is not installed, so nothing runs the scripts");
	}

	@Test
	void theWorkerShowsWhatIsPushed() throws Exception {
		assertThat(run("note")).containsExactly("[show,Frost tonight,{body:Cover it.,tag:t1,data:{link:/tasks/1}}]");
	}

	/** Push API: userVisibleOnly promises that each message shows something. */
	@Test
	void theWorkerShowsSomethingWhateverComes() throws Exception {
		assertThat(run("rubbish")).hasSize(5)
			.containsOnly("[show,Leafward,{body:There is news about your plants.,tag:leafward,data:{link:/}}]");
	}

	@Test
	void aPressedMessageOpensAPageOfThisServerAndNoOther() throws Exception {
		assertThat(run("press")).filteredOn((one) -> !one.equals("[close]"))
			.containsExactly("[open,https://leafward.example/tasks/1?a=b]", "[open,https://leafward.example/tasks/2]",
					"[open,https://leafward.example/x]", "[open,https://leafward.example/]",
					"[open,https://leafward.example/y]", "[open,https://leafward.example/]",
					"[open,https://leafward.example/]");
		assertThat(run("pressAgain")).containsExactly("[close]", "[focus,https://leafward.example/tasks/1]");
	}

	@Test
	void thePageSaysWhatAnOldBrowserLacks() throws Exception {
		assertThat(run("old")).containsExactly("[state,unsupported]", "[form,hidden]", "[state,install]",
				"[form,hidden]");
	}

	/** Nothing is asked and nothing registered before somebody presses the button. */
	@Test
	void thePageSubscribesAndSendsTheForm() throws Exception {
		assertThat(run("add")).containsExactly("[state,ready]", "[form,shown]", "[prevented]", "[ask]",
				"[register,/push-worker.js]", "[subscribe,true,[4,1,2,255,239]]", "[submit,add]",
				"[values,https://push.example.net/new,point,secret]");
	}

	@Test
	void aNoIsTakenForANo() throws Exception {
		assertThat(run("refused")).containsExactly("[prevented]", "[ask]", "[state,denied]", "[form,shown]");
		assertThat(run("deniedBefore")).containsExactly("[state,denied]", "[form,hidden]");
	}

	@Test
	void thePageSaysThatThereIsNoPushService() throws Exception {
		assertThat(run("noService")).contains("[state,failed]").doesNotContain("[submit,add]");
	}

	@Test
	void aSubscriptionThatTheServerDoesNotKnowIsMadeAnew() throws Exception {
		assertThat(run("unknownHere")).containsSubsequence("[state,ready]", "[form,shown]",
				"[unsubscribe,https://push.example.net/old]", "[subscribe,true,[4,1,2,255,239]]", "[submit,add]");
	}

	@Test
	void thePageKnowsTheBrowserItRunsInAndRemovesItThereToo() throws Exception {
		String print = HexFormat.of()
			.formatHex(MessageDigest.getInstance("SHA-256")
				.digest("https://push.example.net/mine".getBytes(StandardCharsets.UTF_8)));
		assertThat(run("knownHere", print)).containsExactly("[state,here]", "[form,hidden]", "[here,true]",
				"[prevented]", "[unsubscribe,https://push.example.net/mine]", "[submit,row]");
	}

}

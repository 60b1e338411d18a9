package org.leafward.reminders.channel.mail;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.net.DatagramPacket;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** A name server that knows some texts (RFC 1035 section 4.1), by UDP on this machine. */
final class NameServer implements AutoCloseable {

	private final DatagramSocket socket = new DatagramSocket(0, InetAddress.getLoopbackAddress());

	private final Map<String, List<String>> texts;

	NameServer(Map<String, List<String>> texts) throws IOException {
		this.texts = texts;
		Thread thread = new Thread(this::serve, "name-server");
		thread.setDaemon(true);
		thread.start();
	}

	String address() {
		return "dns://127.0.0.1:" + this.socket.getLocalPort();
	}

	@Override
	public void close() {
		this.socket.close();
	}

	private void serve() {
		byte[] buffer = new byte[512];
		while (!this.socket.isClosed()) {
			try {
				DatagramPacket asked = new DatagramPacket(buffer, buffer.length);
				this.socket.receive(asked);
				byte[] answer = answer(buffer, asked.getLength());
				this.socket.send(new DatagramPacket(answer, answer.length, asked.getSocketAddress()));
			}
			catch (IOException ex) {
				// Closed by the test.
			}
		}
	}

	private byte[] answer(byte[] query, int length) throws IOException {
		StringBuilder name = new StringBuilder();
		int at = 12;
		while (query[at] != 0) {
			name.append((name.length() > 0) ? "." : "")
				.append(new String(query, at + 1, query[at], StandardCharsets.US_ASCII));
			at += query[at] + 1;
		}
		int end = at + 5;
		List<String> found = this.texts.get(name.toString());
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		DataOutputStream data = new DataOutputStream(out);
		data.write(query, 0, 2);
		// An answer with recursion; 3 is a name that doesn't exist.
		data.writeShort((found != null) ? 0x8180 : 0x8183);
		data.writeShort(1);
		data.writeShort((found != null) ? found.size() : 0);
		data.writeInt(0);
		data.write(query, 12, end - 12);
		for (String text : (found != null) ? found : List.<String>of()) {
			byte[] octets = text.getBytes(StandardCharsets.US_ASCII);
			// The name of the question, TXT, IN, a minute.
			data.writeShort(0xc00c);
			data.writeShort(16);
			data.writeShort(1);
			data.writeInt(60);
			data.writeShort(octets.length + 1);
			data.writeByte(octets.length);
			data.write(octets);
		}
		return out.toByteArray();
	}

}

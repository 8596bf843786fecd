package dev.gantrywright.load;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** A card in memory that fails where a test wants it to. */
class FaultyCard implements Card {
  final Map<String, byte[]> files = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
  final List<String> calls = new ArrayList<>();
  long free = 1 << 24;

  /** Called before each read with the stored bytes; what it gives back is read. */
  byte[] onRead(String name, byte[] stored) {
    return stored;
  }

  @Override
  public String shown() {
    return "test card";
  }

  @Override
  public long freeBytes() {
    return free;
  }

  @Override
  public List<Entry> list() throws IOException {
    List<Entry> out = new ArrayList<>();
    files.forEach((n, b) -> out.add(new Entry(n, b.length, Instant.EPOCH)));
    return out;
  }

  @Override
  public void write(String name, byte[] bytes) throws IOException {
    calls.add("write " + name);
    files.put(name, bytes.clone());
  }

  @Override
  public boolean forgetCached(String name) {
    calls.add("forget " + name);
    return true;
  }

  @Override
  public InputStream read(String name) throws IOException {
    calls.add("read " + name);
    return new ByteArrayInputStream(onRead(name, files.get(name)));
  }

  @Override
  public void rename(String from, String to) throws IOException {
    calls.add("rename " + from + " " + to);
    files.put(to, files.remove(from));
  }

  @Override
  public void delete(String name) throws IOException {
    calls.add("delete " + name);
    files.remove(name);
  }
}

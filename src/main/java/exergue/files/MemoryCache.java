package exergue.files;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** Forgets nothing until the process ends. */
public final class MemoryCache implements Cache {

    private final Map<String, byte[]> kept = new ConcurrentHashMap<>();

    @Override
    public Optional<byte[]> get(String name) {
        return Optional.ofNullable(kept.get(name)).map(byte[]::clone);
    }

    @Override
    public void put(String name, byte[] bytes) {
        kept.put(name, bytes.clone());
    }
}

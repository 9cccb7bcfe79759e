package exergue.demo;

/** A picture in linear light, three fields of shares from 0 to 1, with what of it the coin covers. */
record Photo(Field red, Field green, Field blue, Field cover) {

    /** Light and colour for a finished face. */
    static Photo of(Face face, Metal.Look metal, long seed, double toned) {
        int width = face.height.width;
        int height = face.height.height;
        Photo photo = new Photo(new Field(width, height), new Field(width, height), new Field(width, height), face.cover);
        Lamp.Lit lit = new Lamp(face.height, face.cover, face.pixelsPerMm).lit();
        Field hollows = face.height.blurred(face.pixelsPerMm * 0.22);
        Noise patches = new Noise(seed * 31 + 11);
        int octaves = face.pixelsPerMm < 25 ? 2 : 4;
        for (int i = 0; i < face.height.at.length; i++) {
            if (face.cover.at[i] == 0) {
                continue;
            }
            double x = (i % width) / face.pixelsPerMm;
            double y = (i / width) / face.pixelsPerMm;
            double deep = (hollows.at[i] - face.height.at[i]) / (face.pixelsPerMm * 0.10);
            double cavity = clamp(0.55 * deep + 1.1 * (0.93 - lit.open().at[i]) / 0.35) * (0.75 + 0.5 * patches.rough(x, y, octaves == 4 ? 3 : 2));
            double tone = clamp(0.45 + 0.9 * patches.rough(x / 4, y / 4, octaves) - 0.25 * Math.max(-1, Math.min(1, -deep))) * metal.patinated() * toned;
            double dirt = clamp(cavity) * metal.dirty();
            double gloss = metal.gloss() * (1 - 0.75 * dirt) * (1 - 0.55 * tone);
            double rubbed = clamp(-deep * 0.75) * 0.55 * (1 - tone * 0.3);
            for (int channel = 0; channel < 3; channel++) {
                double body = metal.body().at(channel) * (1 - tone) + metal.patina().at(channel) * tone;
                body = body * (1 - dirt) + metal.dirt().at(channel) * dirt + rubbed * metal.shine().at(channel) * 0.35;
                double sent = body * lit.light().at[i] + metal.shine().at(channel) * gloss * lit.gloss().at[i];
                photo.channel(channel).at[i] = (float) sent;
            }
        }
        return photo;
    }

    Field channel(int number) {
        return number == 0 ? red : number == 1 ? green : blue;
    }

    private static double clamp(double share) {
        return Math.min(1, Math.max(0, share));
    }
}

package exergue.study.die.show;

import exergue.study.die.Die;
import exergue.study.die.DieOfCoin;
import exergue.study.die.DieStudy;
import exergue.study.die.Estimator;
import exergue.study.die.StruckCoin;
import exergue.study.figure.Exhibit;
import exergue.study.figure.Request;
import exergue.study.figure.Subject;
import exergue.study.figure.Wording;
import exergue.study.group.Coins;
import exergue.study.group.Member;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Dies of groups. Counts and estimates keep groups apart; everything about links takes them together, since dies join them. */
public final class DieSubject implements Subject {

    private static final String ESTIMATE_OBVERSE = "obverse dies by ";
    private static final String ESTIMATE_REVERSE = "reverse dies by ";

    @Override
    public String word() {
        return "dies";
    }

    @Override
    public List<String> forms() {
        return List.of("table", "frequencies", "estimates", "links", "pairs", "chains", "states", "diagram");
    }

    @Override
    public Optional<Exhibit> show(String form, Request request) {
        List<Coins> groups = request.groups();
        List<StruckCoin> coins = groups.stream().flatMap(group -> group.members().stream()).map(Member::struck).distinct().toList();
        List<Die> dies = coins.stream().flatMap(coin -> Stream.concat(coin.obverse().stream(), coin.reverse().stream()))
                .map(DieOfCoin::die).toList();
        if (dies.isEmpty()) {
            return Optional.empty();
        }
        DieWords words = DieWords.of(request.wording(), dies);
        DieStudy study = DieStudy.of(coins);
        List<DieStudy> studies = groups.stream().map(DieSubject::study).toList();
        List<String> names = groups.stream().map(Coins::name).toList();
        boolean several = groups.size() > 1;
        return switch (form) {
            case "table" -> Optional.of(several ? new CountTables(words).several(names, studies) : new CountTables(words).one(study));
            case "frequencies" -> Optional.of(new CountTables(words).frequencies(study));
            case "estimates" -> Optional.of(several ? new EstimateTables(words).several(names, studies) : new EstimateTables(words).one(study));
            case "links" -> Optional.of(new LinkTables(words, study).links());
            case "pairs" -> Optional.of(new LinkTables(words, study).combinations());
            case "chains" -> Optional.of(new LinkTables(words, study).chains());
            case "states" -> study.usage().isEmpty() ? Optional.empty() : Optional.of(new LinkTables(words, study).states());
            case "diagram" -> study.chains().isEmpty() ? Optional.empty() : Optional.of(new LinkDiagram(words, study).plot());
            default -> throw new IllegalArgumentException(form);
        };
    }

    private static DieStudy study(Coins group) {
        return DieStudy.of(group.members().stream().map(Member::struck).toList());
    }

    @Override
    public List<String> figures() {
        List<String> names = new ArrayList<>(List.of("obverse dies", "reverse dies", "coins with obverse die", "coins with reverse die",
                "pairs of dies", "chains of dies", "pairs not linked", "reverse dies to an obverse", "coins to an obverse die", "coins to a reverse die",
                "coverage of obverse dies", "coverage of reverse dies"));
        for (Estimator estimator : Estimator.values()) {
            names.add(ESTIMATE_OBVERSE + estimator.title());
            names.add(ESTIMATE_REVERSE + estimator.title());
        }
        return List.copyOf(names);
    }

    @Override
    public String figure(String name, Coins coins, Wording wording) {
        DieStudy study = study(coins);
        DieWords words = new DieWords(wording, false);
        return switch (name) {
            case "obverse dies" -> String.valueOf(study.obverse().dies());
            case "reverse dies" -> String.valueOf(study.reverse().dies());
            case "coins with obverse die" -> String.valueOf(study.obverse().coins());
            case "coins with reverse die" -> String.valueOf(study.reverse().coins());
            case "pairs of dies" -> String.valueOf(study.combinations().size());
            case "chains of dies" -> String.valueOf(study.chains().size());
            case "pairs not linked" -> String.valueOf(study.alone().size());
            case "reverse dies to an obverse" -> words.ratio(study.reversesToObverse());
            case "coins to an obverse die" -> words.ratio(CountTables.coinsToADie(study.obverse()));
            case "coins to a reverse die" -> words.ratio(CountTables.coinsToADie(study.reverse()));
            case "coverage of obverse dies" -> new CountTables(words).coverage(study.obverse());
            case "coverage of reverse dies" -> new CountTables(words).coverage(study.reverse());
            default -> estimate(name, study, words);
        };
    }

    private static String estimate(String name, DieStudy study, DieWords words) {
        boolean obverse = name.startsWith(ESTIMATE_OBVERSE);
        String title = name.substring(ESTIMATE_OBVERSE.length());
        Estimator estimator = Arrays.stream(Estimator.values()).filter(one -> one.title().equals(title)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(name));
        return words.dies(estimator.of(obverse ? study.obverse() : study.reverse()).dies());
    }
}

package exergue.check;

import exergue.check.rules.AxisMissingWhereNoneIs;
import exergue.check.rules.AxisNotAskedFor;
import exergue.check.rules.AxisOfPunchedCoin;
import exergue.check.rules.AxisOfUnifaceCoin;
import exergue.check.rules.BrokenCrossReference;
import exergue.check.rules.CaptionIdUsedTwice;
import exergue.check.rules.CatalogueNumberUsedTwice;
import exergue.check.rules.CoinEnteredTwice;
import exergue.check.rules.CoinWithoutMeasurement;
import exergue.check.rules.CollectionNeverUsed;
import exergue.check.rules.CollectionNumberUsedTwice;
import exergue.check.rules.ConventionNeverUsed;
import exergue.check.rules.ConventionWithoutDirection;
import exergue.check.rules.ConventionWithoutHand;
import exergue.check.rules.ConventionWithoutInstrument;
import exergue.check.rules.DamageListedTwice;
import exergue.check.rules.DateOutsideMint;
import exergue.check.rules.DateOutsideRuler;
import exergue.check.rules.DensityBeyondAlloy;
import exergue.check.rules.DiameterMeaningNotSaid;
import exergue.check.rules.EraDateDisagrees;
import exergue.check.rules.EraDateOutsideRuler;
import exergue.check.rules.ExactFindSpotPrinted;
import exergue.check.rules.FigureThatApplies;
import exergue.check.rules.FindNumberUsedTwice;
import exergue.check.rules.FindSpotNeverUsed;
import exergue.check.rules.GroupValueOfNoCoin;
import exergue.check.rules.HandsDisagree;
import exergue.check.rules.HoardClosedBeforeCoin;
import exergue.check.rules.IdUsedTwice;
import exergue.check.rules.LegendNearType;
import exergue.check.rules.LimitsReversed;
import exergue.check.rules.MeasuredAfterPublication;
import exergue.check.rules.MintNeverUsed;
import exergue.check.rules.NoStandardWork;
import exergue.check.rules.OvalDirectionNotSaid;
import exergue.check.rules.PhotographUsedTwice;
import exergue.check.rules.PhotographWithoutCredit;
import exergue.check.rules.PhotographWithoutPermission;
import exergue.check.rules.PhotographWithoutWidth;
import exergue.check.rules.PictureNotShown;
import exergue.check.rules.ProvenanceDateImpossible;
import exergue.check.rules.ProvenanceOutOfOrder;
import exergue.check.rules.ProvenanceStepTwice;
import exergue.check.rules.ProvenanceYearDisagrees;
import exergue.check.rules.ReadingNotGiven;
import exergue.check.rules.ReferenceGivenTwice;
import exergue.check.rules.ReferenceNamesWorkAgain;
import exergue.check.rules.ReferenceNumberIncomplete;
import exergue.check.rules.ReferenceRangeBackwards;
import exergue.check.rules.RequiredByHouse;
import exergue.check.rules.RulerNeverUsed;
import exergue.check.rules.SideRepeatsType;
import exergue.check.rules.SidesNotDescribed;
import exergue.check.rules.ThisCoinClaimedTwice;
import exergue.check.rules.TotalDoesNotAddUp;
import exergue.check.rules.TwoDiametersWanted;
import exergue.check.rules.TypeWithoutCoins;
import exergue.check.rules.UndeclaredConvention;
import exergue.check.rules.UnifaceWithTwoSides;
import exergue.check.rules.UnknownCollection;
import exergue.check.rules.UnknownEra;
import exergue.check.rules.UnknownFindSpot;
import exergue.check.rules.UnknownMetal;
import exergue.check.rules.UnknownMint;
import exergue.check.rules.UnknownRuler;
import exergue.check.rules.UnknownType;
import exergue.check.rules.UnknownWork;
import exergue.check.rules.WeightCountsWithoutNeed;
import exergue.check.rules.WorkNeverCited;
import exergue.check.rules.WorkNotListed;
import exergue.finding.Code;
import exergue.finding.Finding;
import exergue.finding.Findings;
import exergue.model.Catalogue;
import java.util.ArrayList;
import java.util.List;

/** Runs all the rules. */
public final class Checker {

    private static final List<Rule> RULES = List.of(
            new IdUsedTwice(), new UnknownType(), new UnknownMint(), new UnknownRuler(), new UnknownMetal(), new UnknownEra(),
            new UnknownWork(), new UndeclaredConvention(), new UnknownCollection(), new UnknownFindSpot(),
            new BrokenCrossReference(), new CaptionIdUsedTwice(),
            new CatalogueNumberUsedTwice(), new CollectionNumberUsedTwice(), new FindNumberUsedTwice(),
            new CoinWithoutMeasurement(), new ReadingNotGiven(), new FigureThatApplies(), new AxisOfUnifaceCoin(),
            new AxisOfPunchedCoin(), new AxisMissingWhereNoneIs(), new AxisNotAskedFor(), new TwoDiametersWanted(),
            new OvalDirectionNotSaid(), new DiameterMeaningNotSaid(),
            new HandsDisagree(), new DensityBeyondAlloy(), new DamageListedTwice(),
            new WeightCountsWithoutNeed(),
            new ConventionWithoutHand(), new ConventionWithoutInstrument(), new ConventionWithoutDirection(),
            new ConventionNeverUsed(),
            new DateOutsideMint(), new HoardClosedBeforeCoin(),
            new DateOutsideRuler(), new EraDateDisagrees(), new ProvenanceOutOfOrder(),
            new SidesNotDescribed(), new LimitsReversed(), new PhotographWithoutWidth(),
            new TypeWithoutCoins(), new GroupValueOfNoCoin(), new MintNeverUsed(),
            new RulerNeverUsed(),
            new WorkNeverCited(), new WorkNotListed(), new NoStandardWork(), new CollectionNeverUsed(), new FindSpotNeverUsed(), new ExactFindSpotPrinted(),
            new PhotographWithoutCredit(), new PictureNotShown(), new PhotographWithoutPermission(),
            new RequiredByHouse(), new CoinEnteredTwice(), new PhotographUsedTwice(), new ReferenceGivenTwice(), new ProvenanceStepTwice(),
            new SideRepeatsType(), new TotalDoesNotAddUp(),
            new LegendNearType(), new UnifaceWithTwoSides(), new EraDateOutsideRuler(), new ProvenanceDateImpossible(),
            new ProvenanceYearDisagrees(), new MeasuredAfterPublication(), new ReferenceRangeBackwards(), new ReferenceNumberIncomplete(),
            new ReferenceNamesWorkAgain(), new ThisCoinClaimedTwice());

    private Checker() { }

    /** Everything that any rule has to say of the catalogue, in one run. */
    public static Findings check(Catalogue catalogue) {
        List<Finding> all = new ArrayList<>();
        for (Rule rule : RULES) {
            all.addAll(rule.faults(catalogue));
        }
        return Findings.of(all);
    }

    /** The rules in the order in which they run. */
    public static List<Rule> rules() {
        return RULES;
    }

    /** The code of every rule, for the docs. */
    public static List<Code> codes() {
        return RULES.stream().map(Rule::code).toList();
    }
}

using PlotAgronomy.FieldQuestions.Blends;
using PlotAgronomy.FieldQuestions.Columns;
using PlotAgronomy.FieldQuestions.Fertilizers;
using PlotAgronomy.FieldQuestions.Land;
using PlotAgronomy.FieldQuestions.Liming;
using PlotAgronomy.FieldQuestions.Nutrients;
using PlotAgronomy.FieldQuestions.Planning;
using PlotAgronomy.FieldQuestions.Records;
using PlotAgronomy.FieldQuestions.Seeds;
using PlotAgronomy.FieldQuestions.Soil;
using PlotAgronomy.FieldQuestions.Spreading;
using PlotAgronomy.FieldQuestions.Weather;

namespace PlotAgronomy.FieldQuestions;

/// <summary>The questions that can be asked by their word.</summary>
internal static class AllQuestions
{
    internal static IReadOnlyList<FieldQuestion> List { get; } =
    [
        new("acres", "How many acres has an odd field with a pond in it, and how long do I walk?", Acres.Answer),
        new("bags-lying", "Twelve bags of lime are on the ground: how many more, and when do they work?", BagsOnTheGround.Answer),
        new("bare-weeks", "When does my plot feed nothing, and what would fill the gap?", BareWeeks.Answer),
        new("best-kind", "Which kind comes up best on my ground, and was it the rain?", BestKind.Answer),
        new("blanket", "One rate of lime over all our plots, or each by its test, and thinner with pellets?", Blanket.Answer),
        new("carriers", "My spreader spurts with so little clover: what do I mix it with?", Carriers.Answer),
        new("coated", "What is in the coated bag, are its weeds as labelled, and does it want inoculant?", CoatedTag.Answer),
        new("eaten", "How much of the plot did the deer eat?", Eaten.Answer),
        new("elements", "The sack prints calcium and magnesium: is it lime, and how strong?", PrintedElements.Answer),
        new("exchange", "One soil, three exchange capacities: where do they come from?", ExchangeCapacity.Answer),
        new("first-call", "Which of the open questions is worth the first call?", FirstCall.Answer),
        new("five-ways", "Five notes of one blend: do they weigh out the same, and what goes into the mixer?", FiveWays.Answer),
        new("frost", "Until when may I sow turnips here, by the lows of our own autumns?", Frost.Answer),
        new("gauge", "Nine days after sowing: has the seed dried out, or is it up?", Gauge.Answer),
        new("halfway", "Half of the seed is gone and most of the plot is not: what now?", Halfway.Answer),
        new("hay", "What do hay, cattle and deer carry off, and what does the alfalfa leave?", HayOrGrazing.Answer),
        new("hole", "Which hole do I drill, so that the right rate runs out?", Hole.Answer),
        new("hopper", "Which of my seeds go into the hopper together, and in which order?", Hopper.Answer),
        new("how-many", "I counted and weighed my rye: how much of it do I drill, spread or frost seed?", HowManySeeds.Answer),
        new("index-list", "Seven plots on one list: lime and phosphate for each, and which cells are wrong?", IndexList.Answer),
        new("last-year", "May last year's seed still be sold, and how does the rest keep?", LastYear.Answer),
        new("leftovers", "How far does the seed in the shed reach?", Leftovers.Answer),
        new("litter", "How much of the neighbor's litter feeds my rye, and what comes along?", NeighborsLitter.Answer),
        new("lot-list", "Five lots and four spreaders on one list: what does each sow?", LotList.Answer),
        new("next-fall", "What does this year's book change in next year's plan?", NextFall.Answer),
        new("office-table", "Two offices, two tables: can one list come out?", OfficeTable.Answer),
        new("one-bag", "Can one bag of the store do it alone?", OneBag.Answer),
        new("other-laboratory", "Has my soil changed, or only the laboratory?", OtherLaboratory.Answer),
        new("other-seed", "I know my gate for one seed: where do I start with another?", OtherSeed.Answer),
        new("owed", "What is the plot still owed after each day's work?", Owed.Answer),
        new("own-grade", "Can we mix the grade nobody bags, and was last year's lot worth its label?", OwnGrade.Answer),
        new("own-kind", "The clover of our valley is in no table: how much of it do I sow?", OwnKind.Answer),
        new("pale-leaves", "My oats are pale: is it manganese, sulfur or something else on the report?", PaleLeaves.Answer),
        new("potash-list", "Potash hangs on an exchange capacity that nobody printed: what now?", PotashList.Answer),
        new("rain", "Does the weekend bring enough rain on the seed?", Rain.Answer),
        new("shade", "What is left to sow beside tall trees, and how do I walk it?", Shade.Answer),
        new("shelf", "Which of the bags on the shelf feed the plot through fall for the least money?", FromTheShelf.Answer),
        new("sour-nitrogen", "Which nitrogen sours my plot least, and what does a pound of it cost?", SourNitrogen.Answer),
        new("sowing-dates", "Is this Saturday a day to sow them all?", SowingDates.Answer),
        new("sprouts", "Fewer sprouts in wet paper than the tag says: how much more do I sow?", Sprouts.Answer),
        new("starter", "How much starter may touch the corn, and what does a band beside it save?", StarterInTheRow.Answer),
        new("state-line", "Two states read one sample: what do they want for corn, and why not the same?", StateLines.Answer),
        new("throw", "How far apart are my passes, if all I know is how far it throws?", HalfOfTheThrow.Answer),
        new("trays", "How far apart may my passes be, and what do I lose at the edge?", Trays.Answer),
        new("two-labs", "Did my phosphorus rise, or did only the laboratory change?", TwoLaboratories.Answer),
        new("wait", "Sow today, or wait for a better day?", Wait.Answer),
        new("wheel", "What does my row seeder really drop, and do its spouts agree?", Wheel.Answer),
        new("whole-bags", "How many bags of one grade come near the laboratory's sheet?", WholeBags.Answer),
        new("whose-table", "By whose table do I lime, and with which lime?", WhoseTable.Answer),
    ];
}

using PlotAgronomy.FieldQuestions.Land;
using PlotAgronomy.FieldQuestions.Planning;
using PlotAgronomy.FieldQuestions.Records;
using PlotAgronomy.FieldQuestions.Spreading;
using PlotAgronomy.FieldQuestions.Weather;

namespace PlotAgronomy.FieldQuestions;

/// <summary>The questions that can be asked by their word.</summary>
internal static class AllQuestions
{
    internal static IReadOnlyList<FieldQuestion> List { get; } =
    [
        new("acres", "How many acres has an odd field with a pond in it, and how long do I walk?", Acres.Answer),
        new("bare-weeks", "When does my plot feed nothing, and what would fill the gap?", BareWeeks.Answer),
        new("best-kind", "Which kind comes up best on my ground, and was it the rain?", BestKind.Answer),
        new("carriers", "My spreader spurts with so little clover: what do I mix it with?", Carriers.Answer),
        new("eaten", "How much of the plot did the deer eat?", Eaten.Answer),
        new("first-call", "Which of the open questions is worth the first call?", FirstCall.Answer),
        new("frost", "Until when may I sow turnips here, by the lows of our own autumns?", Frost.Answer),
        new("gauge", "Nine days after sowing: has the seed dried out, or is it up?", Gauge.Answer),
        new("halfway", "Half of the seed is gone and most of the plot is not: what now?", Halfway.Answer),
        new("hole", "Which hole do I drill, so that the right rate runs out?", Hole.Answer),
        new("hopper", "Which of my seeds go into the hopper together, and in which order?", Hopper.Answer),
        new("leftovers", "How far does the seed in the shed reach?", Leftovers.Answer),
        new("next-fall", "What does this year's book change in next year's plan?", NextFall.Answer),
        new("one-bag", "Can one bag of the store do it alone?", OneBag.Answer),
        new("other-laboratory", "Has my soil changed, or only the laboratory?", OtherLaboratory.Answer),
        new("other-seed", "I know my gate for one seed: where do I start with another?", OtherSeed.Answer),
        new("owed", "What is the plot still owed after each day's work?", Owed.Answer),
        new("rain", "Does the weekend bring enough rain on the seed?", Rain.Answer),
        new("shade", "What is left to sow beside tall trees, and how do I walk it?", Shade.Answer),
        new("throw", "How far apart are my passes, if all I know is how far it throws?", HalfOfTheThrow.Answer),
        new("trays", "How far apart may my passes be, and what do I lose at the edge?", Trays.Answer),
        new("wait", "Sow today, or wait for a better day?", Wait.Answer),
        new("wheel", "What does my row seeder really drop, and do its spouts agree?", Wheel.Answer),
    ];
}

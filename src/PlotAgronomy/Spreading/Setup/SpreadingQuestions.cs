using PlotAgronomy.Reference;

namespace PlotAgronomy.Spreading;

/// <summary>What to measure where the spreader cannot be set by what was weighed.</summary>
internal static class SpreadingQuestions
{
    internal static OpenQuestion<SpreaderRun> Run(string kinds) =>
        QuestionCatalog.Ask<SpreaderRun>(SpreadingCodes.AskRun, [], run => run.ToString(), ("kinds", kinds));

    /// <summary>What a weight on the label of a hopper is the weight of.</summary>
    internal static OpenQuestion<CropKind> Hopper(UnitsNet.Mass weight) =>
        QuestionCatalog.Ask<CropKind>(
            SpreadingCodes.AskHopper,
            [],
            kind => kind.CommonName,
            ("weight", Amounts.Print(weight, "lb", 1))
        );

    internal static OpenQuestion<TimeSpan> Time(SpreaderRun run) =>
        QuestionCatalog.Ask<TimeSpan>(
            SpreadingCodes.AskTime,
            [],
            time => Amounts.Print(time, "s", 0),
            ("kind", run.Kind.ShortName)
        );
}

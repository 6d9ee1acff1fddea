using PlotAgronomy.Nutrients;
using PlotAgronomy.Planning;

namespace PlotAgronomy.Sheets;

/// <summary>One system's answers in words.</summary>
internal static class SystemWords
{
    /// <summary>The row, or the row by nutrient where they differ.</summary>
    internal static string AskedFor(SystemReply reply) =>
        reply.Row is { } row
            ? CropRows.WordsFor(row)
            : string.Join(
                "; ",
                reply.Asked.Select(a => $"{SheetText.Symbol(a.Nutrient)}: {CropRows.WordsFor(a.Answer.Crop.Row)}")
            );

    internal static string Figure(NutrientReply? reply) =>
        reply is null ? "-"
        : reply.Need is { } need ? (need.IsLegalMaximum ? "at most " : "") + Amounts.Print(need.Rate.PoundsPerAcre, 1)
        : reply.IsAnswered ? "no rate"
        : "-";

    internal static string Reasons(SystemReply reply) =>
        string.Join(" ", reply.Asked.Select(a => $"{SheetText.Symbol(a.Nutrient)}: {Reason(a)}"));

    /// <summary>Why a system gives neither a rate nor a rating.</summary>
    internal static string Why(SystemSilence silence) =>
        !silence.Unanswered.IsEmpty ? $"{string.Join("; ", silence.Unanswered.GroupBy(u => u.Reason).Select(Silent))}."
        : silence is { NearestRow: { } row, YieldUnit: { } unit }
            ? $"asked for {CropRows.WordsFor(row)} it needs the yield in {NutrientWords.InFull(unit)}, which the plan does not "
                + "give."
        : "it has no row that comes near.";

    private static string Reason(NutrientReply reply) =>
        reply.Need is { } need ? need.Why
        : reply.Unanswered is { } silent ? $"{silent.Reason}."
        : "it does not deal with this nutrient.";

    private static string Silent(IGrouping<string, UnansweredNutrient> alike) =>
        $"{string.Join(" and ", alike.Select(u => SheetText.Symbol(u.Nutrient)))}: {alike.Key}";
}

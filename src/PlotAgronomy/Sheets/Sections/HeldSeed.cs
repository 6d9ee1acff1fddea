using PlotAgronomy.Planning;

namespace PlotAgronomy.Sheets;

/// <summary>What is said of seed that is not sown now, where seed is weighed out and where it is bought.</summary>
internal static class HeldSeed
{
    internal static void SayKept(SectionWriter sheet, PlotAnswers answers)
    {
        sheet.Remark(
            answers.Verdict.Told.Held.Select(held =>
                ("not now", $"{Lot(held)}: what you have of it stays in the bag{Then(held)}.")
            )
        );
    }

    internal static void SayNotBought(SectionWriter sheet, PlotAnswers answers)
    {
        foreach (var held in answers.Verdict.Told.Held)
        {
            sheet.Say($"Not bought now: {Lot(held)}. {WhenBought(held)}.");
        }
    }

    private static string Lot(KindVerdict held) => SheetText.Name(held.Planned.Offer.Item);

    private static string Then(KindVerdict held) =>
        held is { Kept: { } kept, TestMustShow: { } ph }
            ? $" until a test shows pH {Amounts.Print(ph, 1)} or more, then {SheetText.Weight(kept.Weight)} of it is sown"
            : "";

    private static string WhenBought(KindVerdict held) =>
        held.Decision switch
        {
            KindDecision.AfterTest => $"Buy it when a test shows pH {Amounts.Print(held.TestMustShow!.Value, 1)} or more",
            KindDecision.OtherSeed => "Buy untreated seed in its place",
            KindDecision.NotThisSeason => held.NextDay is { } next
                ? $"Buy it fresh for its season, from {SheetText.Date(next)}"
                : "Buy it fresh for its season",
            _ => "This ground does not bear it",
        };
}

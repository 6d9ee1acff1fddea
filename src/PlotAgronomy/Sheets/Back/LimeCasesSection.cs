using PlotAgronomy.Liming;
using PlotAgronomy.Planning;

namespace PlotAgronomy.Sheets;

/// <summary>The lime under each plausible answer to what is not known, side by side, and the range it puts on the
/// order.</summary>
internal static class LimeCasesSection
{
    /// <summary>A range to plan by, where only a strip or a meter was read.</summary>
    internal static void Home(SectionWriter sheet, LimeAnswer lime)
    {
        if (lime is not { ByHomePh: { } range, HomeRange: var (low, high) })
        {
            return;
        }

        string texture = range.IsTextureKnown ? "" : " (from sandy loam to clay loam: the texture is not in the plan)";
        sheet.Figure(
            "lime.home",
            $"by your own reading, {range.Reading}",
            new(
                $"{range} of ground limestone to pH {Amounts.Print(range.TargetPh, 1)}{texture}, {SheetText.Weight(low)} to "
                    + $"{SheetText.Weight(high)} on the plot: "
                    + "to plan by, not to buy by",
                SheetAmount.Range(range.Low.ShortTonsPerAcre, range.High.ShortTonsPerAcre, "ton/ac")
            ),
            range
        );
        sheet.Say("A laboratory's pH and buffer reading would settle where in this range the plot lies.");
        if (lime.HomeKinds is not var (sour, unsure))
        {
            return;
        }

        if (!sour.IsEmpty)
        {
            sheet.Say($"Too sour even at the highest pH it may stand for: {string.Join(", ", sour.Select(SheetText.Name))}.");
        }

        if (!unsure.IsEmpty)
        {
            sheet.Say($"Your reading cannot tell whether these may be sown: {string.Join(", ", unsure.Select(SheetText.Name))}.");
        }
    }

    /// <summary>The orders, or where nothing is on offer the rates.</summary>
    internal static void Orders(SectionWriter sheet, PlotAnswers answers)
    {
        var lime = answers.Lime.Told;
        if (lime.OrderRange is var (low, high))
        {
            sheet.Table(
                ["if the answer is", "spread on the plot", "of", "buy", answers.Plan.Currency.CostColumn],
                lime.Order.Cases.Select(c => Row(sheet, answers, c))
            );
            string[] ends = [SheetText.Bought(low.Value), SheetText.Bought(high.Value)];
            string range = string.Join(" and ", ends.Distinct());
            sheet.Say($"So the order lies between {range}. {Last(lime)}");
        }
        else if (lime.Rate.State == AnswerState.Open)
        {
            sheet.Table(
                ["if the answer is", "rate"],
                answers.Lime.Cases.Select(c =>
                    sheet.Row(
                        FigureCode.Of("lime", "if", FigureCode.Word(c.Assumption)),
                        c.Assumption,
                        new(Rate(c.Value), null),
                        [c.Assumption, Rate(c.Value)],
                        [],
                        [.. c.Value.RestsOn]
                    )
                )
            );
        }

        if (lime.CasesWithoutOrder is { IsEmpty: false } without && lime.OrderRange is not null)
        {
            sheet.Say(
                $"Not in the table, for no label on offer tells it: {string.Join("; ", without)}. "
                    + "Ask the dealer how fine his lime is, in percent through each sieve."
            );
        }
    }

    private static SheetRow Row(SectionWriter sheet, PlotAnswers answers, AnswerCase<LimeOrder> one)
    {
        var order = one.Value;
        return sheet.Row(
            FigureCode.Of("lime", "if", FigureCode.Word(one.Assumption)),
            one.Assumption,
            new(SheetText.Weight(order.Product), SheetAmount.Weight(order.Product)),
            [
                one.Assumption,
                SheetText.Weight(order.Product),
                order.Request.Material.Name,
                SheetText.Bought(order),
                answers.Plan.Currency.Print(order.Cost ?? 0),
            ],
            [],
            order
        );
    }

    private static string Last(LimeAnswer lime) =>
        lime.Rate.State == AnswerState.Open
            ? "Buy none before it is answered."
            : "The order below holds while nobody says otherwise.";

    private static string Rate(LimeAnswer lime) =>
        lime.Rate.TryGet(out var rate) ? (rate.IsNone ? "no lime" : rate.AmountInWords) : "no rate";
}

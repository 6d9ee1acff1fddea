using PlotAgronomy.Liming;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Sheets;

/// <summary>Lime to buy and spread, and what it will have done by planting day.</summary>
internal static class LimeSection
{
    /// <summary>None where nothing in the plan has to do with lime.</summary>
    internal static SheetSection? Write(PlotAnswers answers)
    {
        if (answers.Lime.State == AnswerState.NotAsked)
        {
            return null;
        }

        var lime = answers.Lime.Told;
        var plan = answers.Plan;
        var sheet = new SectionWriter("lime", "Lime", SheetPart.Back);
        if (lime.Printed is { Silent: not LimeLabels.None } && answers.LimeMethod.By != ChosenBy.Plan)
        {
            if (lime.Target is { Ph: { } asked, SetBy: { } kind })
            {
                sheet.Say($"Of your kinds {SheetText.Name(kind)} asks most, for pH {Amounts.Print(asked, 1)}.");
            }
        }
        else if (lime.TargetPh is { } target)
        {
            sheet.Say(
                $"Target pH {target.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture)}: {lime.TargetReason}"
            );
        }

        sheet.RestsOn([.. lime.RestsOn]);
        Printed(sheet, lime);
        Computed(sheet, answers);
        LimeCasesSection.Home(sheet, lime);
        if (lime.WeaklyBuffered is { } weak && lime.Rate.OrNull() is { } part)
        {
            sheet.Figure(
                "lime.weakly-buffered",
                "weakly buffered soil: put on now",
                new(
                    $"{part.AmountInWords}, not more before a new test within {Amounts.Print(weak.RetestWithinMonths, 0)} months",
                    SheetAmount.Tons(part.OfBasis)
                ),
                weak
            );
        }

        if (lime.Order.OrNull() is { } order)
        {
            sheet.Figure(
                "lime.spread",
                "spread on the plot",
                new(
                    $"{SheetText.Weight(order.Product)} of {lime.Offer!.Item.Name} ({SheetText.Rate(order.ProductRate)}, "
                        + $"{Amounts.Print(order.ProductRate, "lb/1000 ft2", 0)})",
                    SheetAmount.Weight(order.Product)
                ),
                order
            );
            sheet.Figure(
                "lime.buy",
                "buy",
                new(
                    $"{SheetText.Bought(order)}, {plan.Currency.Print(order.Cost ?? 0)}",
                    SheetAmount.Money(order.Cost ?? 0, plan.Currency)
                ),
                order
            );
            if (order.Dressings.Length > 1)
            {
                sheet.Step(order.Dressings.Select(d => $"{Day(d)}: {SheetText.Weight(d.Mass)} ({SheetText.Rate(d.Rate)})"));
            }
        }
        else if (lime.Rate.State == AnswerState.Given)
        {
            sheet.Say(
                plan.LimeOffers.IsEmpty
                    ? "No liming material is on offer."
                    : "No liming material on offer can be taken for this rate; see the findings."
            );
        }

        LimeCasesSection.Orders(sheet, answers);
        Outlook(sheet, answers);
        return sheet.CloseOrNone();
    }

    private static void Printed(SectionWriter sheet, LimeAnswer lime)
    {
        if (lime.Printed is not { } printed)
        {
            return;
        }

        string silent = printed.MissingInWords is { Length: > 0 } missing ? $"; not printed: {missing}" : "";
        sheet.Figure(
            "lime.printed",
            "printed by the laboratory, used first",
            new($"{printed.Rate?.ToString() ?? printed.InPrint}{silent}", SheetAmount.Tons(printed.OfBasis)),
            printed
        );
        if (lime.Check is { Computed: { } alike } check)
        {
            string verdict = check.Differs == true ? "it differs, ask the laboratory why" : "within what the reading allows";
            sheet.Figure(
                "lime.beside",
                $"beside it, by {check.Need.Method.Name}",
                new($"{SheetText.Tons(alike)} of the same lime and depth: {verdict}", SheetAmount.Tons(alike)),
                check
            );
        }
    }

    private static void Computed(SectionWriter sheet, PlotAnswers answers)
    {
        var choice = answers.LimeMethod;
        if (answers.Lime.Told.Computed is not { } need)
        {
            if (answers.Lime.Told is { Printed: null, Rate.State: AnswerState.Open } && answers.Plan.ReportOrNone.PrintsReadings)
            {
                sheet.Say($"No lime method is chosen: {choice.Reason}.");
            }

            return;
        }

        string why = choice.By == ChosenBy.Plan ? "" : $" ({choice.Reason})";
        if (need.Rate is { } computed)
        {
            sheet.Figure(
                "lime.rate",
                $"by {need.Method.Name}{why}",
                new(
                    computed.IsNone
                        ? "no lime"
                        : $"{computed.AmountInWords}, for "
                            + $"{Amounts.Print(computed.Depth, "in", 1)} of soil{Rounded(need)}{Range(need)}",
                    Amount(need)
                ),
                need
            );
        }
        else
        {
            sheet.Say($"{need.Method.Name} gives no rate for this report; see the findings.");
        }
    }

    private static void Outlook(SectionWriter sheet, PlotAnswers answers)
    {
        if (answers.Lime.Told.Outlook.OrNull() is not { } outlook)
        {
            return;
        }

        string rest = outlook.SomeWorksLater ? ", the coarse rest later" : "";
        sheet.Figure(
            "lime.worked",
            "worked by planting day",
            new(
                $"{Share(outlook.Worked)} of the lime; within a year {Share(outlook.WorkedInAYear)}{rest}",
                SheetAmount.Range(outlook.Worked.Low.Percent, outlook.Worked.High.Percent, "%")
            ),
            outlook
        );
        string where = outlook.Request.Placement == LimePlacement.Surface ? ", in the top inches only" : "";
        sheet.Figure(
            "lime.ph",
            "pH to expect on planting day",
            new(
                $"{SheetText.FromTo(outlook.ExpectedPhLow, outlook.ExpectedPhHigh, 1)}{where}",
                SheetAmount.Range(outlook.ExpectedPhLow, outlook.ExpectedPhHigh, "pH")
            ),
            outlook
        );
    }

    private static string Day(LimeDressing dressing) =>
        dressing.On is { } on ? SheetText.Date(on) : $"{Amounts.Print(dressing.MonthsAfterFirst, 0)} months after the first";

    private static string Share(LimeReaction reaction) => $"{SheetText.FromTo(reaction.Low.Percent, reaction.High.Percent, 0)} %";

    private static string Rounded(LimeNeed need)
    {
        if (need.Rounded is not { } published)
        {
            return "";
        }

        string rounded = published.IsNone ? "none" : SheetText.Tons(published.OfBasis);
        return $", rounded by the institution: {rounded}";
    }

    private static SheetAmount Amount(LimeNeed need)
    {
        var rate = SheetAmount.Tons(need.Rate!.OfBasis);
        return need is { Lowest: { } low, Highest: { } high }
            ? rate.Within(low.OfBasis.ShortTonsPerAcre, high.OfBasis.ShortTonsPerAcre)
            : rate;
    }

    private static string Range(LimeNeed need) =>
        need.ReadingRange is var (low, high)
            ? $"; if the reading is off by {Amounts.Print(need.ReadingErrorPh, 2)}, "
                + $"{Amounts.Print(low.OfBasis.ShortTonsPerAcre, 1)} to {Amounts.Print(high.OfBasis.ShortTonsPerAcre, 1)} ton/ac"
            : "";
}

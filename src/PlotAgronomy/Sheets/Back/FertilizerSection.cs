using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Planning;

namespace PlotAgronomy.Sheets;

/// <summary>Nutrients needed, and the products that bring them.</summary>
internal static class FertilizerSection
{
    /// <summary>None where nobody asks for nutrients.</summary>
    internal static SheetSection? Write(PlotAnswers answers)
    {
        if (answers.Need.State == AnswerState.NotAsked)
        {
            return null;
        }

        var plan = answers.Plan;
        var need = answers.Need.Told;
        var fertilizer = answers.Fertilizer.Told;
        var sheet = new SectionWriter("fertilizer", "Fertilizer: need and what is brought", SheetPart.Back);
        sheet.RestsOn(need);
        sheet.Table(
            ["nutrient", "need, lb/ac", "not above, lb/ac", "brought, lb/ac"],
            fertilizer.Brought.Select(b =>
                sheet.Row(
                    FigureCode.Of("need", FigureCode.Word(b.Target.Nutrient)),
                    SheetText.Nutrient(b.Target.Nutrient),
                    new(Amounts.Print(b.Target.AtLeast, "lb/ac", 0), SheetAmount.Rate(b.Target.AtLeast)),
                    [
                        SheetText.Nutrient(b.Target.Nutrient),
                        Amounts.Print(b.Target.AtLeast.PoundsPerAcre, 0),
                        b.Target.AtMost is { } most ? Amounts.Print(most.PoundsPerAcre, 0) : "-",
                        b.Balance is { } balance ? Amounts.Print(balance.Delivered.PoundsPerAcre, 0) : "-",
                    ],
                    need.ShowWork(b.Target.Nutrient)
                )
            )
        );
        foreach (var (_, cure) in need.NotKnown)
        {
            sheet.Say(cure.Text);
        }

        Cases(sheet, answers);

        if (!fertilizer.Purchase.TryGet(out var purchase))
        {
            sheet.Say(
                fertilizer.Waits ? "Nothing of this blend is sown now, so nothing is bought; the need is told for the day it is."
                : !fertilizer.IsNeeded && need.NotKnown.Any() ? "Nothing is bought until that is known."
                : answers.Need.State == AnswerState.NoneNeeded ? "No fertilizer is needed."
                : !fertilizer.IsNeeded && fertilizer.LaterNitrogen.State == AnswerState.Given
                    ? "No fertilizer is bought for the sowing."
                : !fertilizer.IsNeeded ? "No fertilizer is bought: what is needed is too little."
                : plan.FertilizerOffers.IsEmpty ? "No fertilizer is on offer in the plan."
                : "No set of the fertilizers on offer was found before the search stopped, see the findings."
            );
            ForTheStand(sheet, fertilizer);
            return sheet.Close();
        }

        if (!purchase.MeetsEveryNeed)
        {
            sheet.Say(
                purchase.Conflict is { } conflict
                    ? $"The products on offer cannot meet every need: {conflict}. This is the set that misses least."
                    : "The products on offer cannot meet every need. This is the set that misses least."
            );
        }

        return sheet.Close();
    }

    /// <summary>Why so much of each, what each product brings, and what else was on the shelf.</summary>
    internal static SheetSection? WriteWorking(PlotAnswers answers)
    {
        if (answers.Need.State == AnswerState.NotAsked)
        {
            return null;
        }

        var plan = answers.Plan;
        var need = answers.Need.Told;
        var fertilizer = answers.Fertilizer.Told;
        var sheet = new SectionWriter("products", "Why so much, and the products", SheetPart.Work);
        sheet.RestsOn(need);
        sheet.Remark(
            need.Targets.GroupBy(t => t.Reason)
                .Select(alike => (string.Join(", ", alike.Select(t => SheetText.Symbol(t.Nutrient))), alike.Key))
        );
        if (!fertilizer.Purchase.TryGet(out var purchase))
        {
            return sheet.CloseOrNone();
        }

        sheet.Table(
            ["product", "buy", "spread on the plot", "rate, lb/ac", "left over", plan.Currency.CostColumn],
            purchase.Lines.Select(line =>
                sheet.Row(
                    FigureCode.Of("spread", FigureCode.Word(line.Product.Name)),
                    line.Product.Name,
                    new(SheetText.Weight(line.Spread), SheetAmount.Weight(line.Spread)),
                    [
                        line.Product.Name,
                        SheetText.Packages(line.Packages, line.Offer.Package),
                        SheetText.Weight(line.Spread),
                        Amounts.Print(line.Rate.PoundsPerAcre, 0),
                        SheetText.LeftOver(line.Leftover),
                        plan.Currency.Print(line.Cost),
                    ],
                    [],
                    purchase
                )
            )
        );
        sheet.Figure(
            "fertilizer.cost",
            "cost of the fertilizer",
            new(plan.Currency.Print(purchase.TotalCost), SheetAmount.Money(purchase.TotalCost, plan.Currency)),
            purchase
        );
        ForTheStand(sheet, fertilizer);
        foreach (var beside in fertilizer.Others)
        {
            var other = beside.Purchase;
            sheet.Figure(
                FigureCode.Of("fertilizer", Word(beside.Is).Code),
                Word(beside.Is).Label,
                new(
                    $"{InWords(other)}: {plan.Currency.Print(other.TotalCost)}",
                    SheetAmount.Money(other.TotalCost, plan.Currency)
                ),
                other
            );
        }

        return sheet.Close();
    }

    /// <summary>Nitrogen that is given to the stand: what, how much and when.</summary>
    private static void ForTheStand(SectionWriter sheet, FertilizerAnswer fertilizer)
    {
        if (!fertilizer.LaterNitrogen.TryGet(out var later))
        {
            return;
        }

        string doses = string.Join(", then ", later.Doses.Select(d => $"{Dose(d)} {d.When}"));
        string along = Amounts.Print(later.CameAlong, "lb/ac", 0);
        string bought =
            later.Purchase.State == AnswerState.NoneNeeded
                ? $"That is too little to buy: {along} come along with the fertilizer for the sowing."
            : later.Purchase.TryGet(out var purchase) ? $"Bought apart: {InWords(purchase)}, {Spread(purchase)} in all."
            : "Nothing on offer brings nitrogen alone: ask the dealer for one.";
        sheet.Say($"Nitrogen for the stand, not before the seed: {doses}. {bought}");
    }

    private static string Spread(Purchase purchase) =>
        string.Join(", ", purchase.Lines.Select(l => $"{SheetText.Weight(l.Spread)} of it"));

    internal static string Dose(NitrogenDose dose) =>
        $"{SheetText.FromTo(dose.Low.PoundsPerAcre, dose.High.PoundsPerAcre, 0)} lb/ac";

    /// <summary>The need under each plausible answer to what is asked, side by side.</summary>
    private static void Cases(SectionWriter sheet, PlotAnswers answers)
    {
        PlantNutrient[] asked = [PlantNutrient.Phosphate, PlantNutrient.Potash];
        sheet.Table(
            ["if the answer is", "P2O5, lb/ac", "K2O, lb/ac"],
            answers.Need.Cases.Select(c =>
                sheet.Row(
                    FigureCode.Of("need", "if", FigureCode.Word(c.Assumption)),
                    c.Assumption,
                    new(string.Join("; ", asked.Select(n => Rate(c.Value, n))), null),
                    [c.Assumption, .. asked.Select(n => Rate(c.Value, n))],
                    [],
                    c.Value
                )
            )
        );
    }

    private static string Rate(PlotNeed need, PlantNutrient nutrient) =>
        need.Targets.FirstOrDefault(t => t.Nutrient == nutrient) is { } target
            ? Amounts.Print(target.AtLeast.PoundsPerAcre, 0)
            : "no figure";

    private static (string Code, string Label) Word(RunnerUp other) =>
        other switch
        {
            RunnerUp.NextCheapest => ("next-cheapest", "next cheapest"),
            RunnerUp.Cheapest => ("cheapest", "cheapest, but well above the need"),
            RunnerUp.ClosestToNeed => ("closest", "closest to the need"),
            _ => ("fewest-products", "with the fewest products"),
        };

    private static string InWords(Purchase purchase) =>
        string.Join(", ", purchase.Lines.Select(l => $"{SheetText.Packages(l.Packages, l.Offer.Package)} {l.Product.Name}"));
}

using PlotAgronomy.Liming;

namespace PlotAgronomy.FieldQuestions.Liming;

/// <summary>A sack in the shed prints calcium and magnesium and no strength; another says gypsum; a pail holds the ash of the
/// stove.</summary>
internal static class PrintedElements
{
    internal static void Answer(TextWriter output)
    {
        var calcium = Fraction.FromPercent(30);
        var magnesium = Fraction.FromPercent(4);
        double strength = LimingCompound.CcePercentFromElements(calcium, magnesium);
        output.WriteLine($"{Amounts.Print(calcium, 0)} calcium and {Amounts.Print(magnesium, 0)} magnesium are as strong as "
            + $"{Amounts.Print(strength, 0)} % of pure lime, if it is lime. Pure substances:");
        foreach (var compound in LimingCompound.All)
        {
            output.WriteLine($"  {compound.Name}: {Amounts.Print(compound.CcePercent, 0)} % "
                + $"({Amounts.Print(compound.Calcium, 0)} calcium, {Amounts.Print(compound.Magnesium, 0)} magnesium)");
        }

        var sieves = SieveAnalysis.FromPercent((10, 100), (20, 96), (40, 88));
        var sack = LimingMaterial.FromAnalysis("the sack", LimingForm.Pelletized, strength, sieves, magnesium: magnesium);
        var ash = LimingMaterial.FromAnalysis("the ash", LimingForm.WoodAsh, ccePercent: 45);
        var gypsum = LimingMaterial.FromAnalysis("the gypsum", LimingForm.Gypsum, ccePercent: LimingCompound.Gypsum.CcePercent);
        var power = NeutralizingPower.In(Mass.FromPounds(40), sack, LimeIndex.CalciumCarbonateEquivalent)
            .Plus(NeutralizingPower.In(Mass.FromPounds(25), ash, LimeIndex.CalciumCarbonateEquivalent));
        output.WriteLine($"A sack of 40 lb and 25 lb of ash: {power}; "
            + $"{Amounts.Print(sack.MagnesiumIn(Mass.FromPounds(40))!.Value, "lb", 1)} of magnesium in the sack.");
        output.WriteLine(gypsum.Neutralizes ? "The gypsum sweetens the soil." : "The gypsum does not sweeten the soil at all.");
        output.Warn(new[] { sack, ash, gypsum }.SelectMany(m => m.Check()));

        output.WriteLine($"With its sieves the sack scores {Amounts.Print(sack.FigureIn(LimeIndex.OregonScore).Value, 0)} in "
            + "Oregon.");
        var named = LimeIndex.All.Where(i => i.Sieves.Length > 0 && i != LimeIndex.OregonScore).Select(i => i.Name);
        output.WriteLine($"Other states' figures want sieves as well: {string.Join("; ", named)}.");
    }
}

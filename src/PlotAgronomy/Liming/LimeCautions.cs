using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>The cautions that go with a material.</summary>
internal static class LimeCautions
{
    /// <summary>Wood ash in a year, because of salts and boron (orchard practice).</summary>
    private const double MostWoodAshPerThousandSquareFeet = 20;

    internal static IEnumerable<Finding> Of(LimingMaterial material, ApplicationRate rate)
    {
        yield return FindingCatalog.Create(material.IsCaustic ? "lime-caustic" : "lime-dust");
        if (material.Form == LimingForm.WoodAsh)
        {
            yield return FindingCatalog.Create("lime-wood-ash");
            if (rate.PoundsPerThousandSquareFeet > MostWoodAshPerThousandSquareFeet)
            {
                yield return FindingCatalog.Create("lime-wood-ash-rate", ("rate", Amounts.Print(rate.PoundsPerThousandSquareFeet, 1)));
            }
        }
    }
}

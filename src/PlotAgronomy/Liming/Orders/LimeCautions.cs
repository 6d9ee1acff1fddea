using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>The cautions that go with a material.</summary>
internal static class LimeCautions
{
    internal static IEnumerable<Finding> Of(LimingMaterial material, ApplicationRate rate)
    {
        yield return FindingCatalog.Create(material.IsCaustic ? LimingCodes.Caustic : LimingCodes.Dust);
        if (material.Form == LimingForm.WoodAsh)
        {
            yield return FindingCatalog.Create(LimingCodes.WoodAsh);
            if (rate.PoundsPerThousandSquareFeet > LimingConstants.All["most-wood-ash"])
            {
                yield return FindingCatalog.Create(
                    LimingCodes.WoodAshRate,
                    ("rate", Amounts.Print(rate.PoundsPerThousandSquareFeet, 1))
                );
            }
        }
    }

    /// <summary>Whether the soil asks for dolomite, when its magnesium is known and printed in ppm.</summary>
    internal static IEnumerable<Finding> OfMagnesium(SoilReport? report, LimingMaterial material)
    {
        if (report?.Find(SoilAnalyte.Magnesium) is not { Unit: SoilTestUnit.PartsPerMillion } reading)
        {
            yield break;
        }

        double limit = LimingConstants.All["low-magnesium"];
        bool dolomitic = material.Magnesium is { Value: > 0 };
        if (reading.PrintedValue < limit && !dolomitic)
        {
            yield return FindingCatalog.Create(
                LimingCodes.DolomiteWanted,
                ("mg", Amounts.Print(reading.PrintedValue, 0)),
                ("limit", Amounts.Print(limit, 0))
            );
        }
        else if (reading.PrintedValue >= limit && dolomitic)
        {
            yield return FindingCatalog.Create(LimingCodes.DolomiteNotNeeded, ("mg", Amounts.Print(reading.PrintedValue, 0)));
        }
    }
}

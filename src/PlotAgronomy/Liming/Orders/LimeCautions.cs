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

    /// <summary>Whether the soil has the pH already that a rate aims at.</summary>
    internal static bool IsAtTarget(PlotSoil? soil, LimeRate rate) =>
        soil?.WaterPh is { } ph && !Tolerance.IsBelow(ph.Value, rate.TargetPh);

    /// <summary>The warning that stops an order for a soil at the pH aimed at; null where lime is due, or no rate.</summary>
    internal static Finding? OfTarget(PlotSoil? soil, LimeRate rate) =>
        rate.OfBasis.PoundsPerAcre > 0 && IsAtTarget(soil, rate)
            ? FindingCatalog.Create(
                LimingCodes.AboveTarget,
                ("ph", LimeText.Ph(soil!.WaterPh!.Value)),
                ("target", LimeText.Ph(rate.TargetPh))
            )
            : null;

    /// <summary>Whether caustic lime would go on too near to the seed, or on a day nobody states.</summary>
    internal static bool IsCausticNearSeed(LimeOrderRequest request) =>
        request is { Material.IsCaustic: true, SowingOn: { } sowing }
        && !(sowing.DayNumber - request.FirstDressingOn?.DayNumber >= LimingConstants.All["caustic-days-before-seed"]);

    /// <summary>The warning that stops an order of caustic lime near the seed; null where there is none.</summary>
    internal static Finding? OfSeed(LimeOrderRequest request) =>
        IsCausticNearSeed(request)
            ? FindingCatalog.Create(
                LimingCodes.CausticNearSeed,
                ("material", request.Material.Name),
                ("days", Amounts.Print(LimingConstants.All["caustic-days-before-seed"], 0)),
                (
                    "when",
                    request.FirstDressingOn is { } limed
                        ? $"the lime goes on {LimeText.Date(limed)}, the seed {LimeText.Date(request.SowingOn!.Value)}"
                        : "no day of liming is stated"
                )
            )
            : null;

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

using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>Walks a reading from its printed unit to another: first to the element on its own basis (weight, volume or
/// area), then to the other basis, then to the unit asked for. Each leg is exact where the definitions allow.</summary>
internal sealed class UnitWalk
{
    private readonly SoilReading reading;
    private readonly ConversionFacts facts;
    private readonly ImmutableArray<ConversionStep>.Builder steps = ImmutableArray.CreateBuilder<ConversionStep>();
    private double amount;

    private UnitWalk(SoilReading reading, SampledSoil soil)
    {
        this.reading = reading;
        facts = new ConversionFacts(reading, soil);
        amount = reading.PrintedValue;
    }

    private enum Basis
    {
        Weight,
        Volume,
        Area,
    }

    internal static ReadingConversion Run(SoilReading reading, SoilTestUnit unit, SampledSoil soil, PrintedForm form)
    {
        var walk = new UnitWalk(reading, soil);
        walk.ToElement();
        walk.Open(reading.Unit);
        walk.Cross(BasisOf(reading.Unit), BasisOf(unit));
        walk.Close(unit);
        walk.ToForm(form);
        var converted = SoilReading.Of(reading.Analyte, walk.amount, unit, reading.Extractant, form);
        return new ReadingConversion(reading, converted, walk.steps.ToImmutable(), walk.facts.Findings);
    }

    private static Basis BasisOf(SoilTestUnit unit) =>
        unit switch
        {
            SoilTestUnit.PoundsPerAcre or SoilTestUnit.KilogramsPerHectare => Basis.Area,
            SoilTestUnit.MilligramsPerCubicDecimeter
            or SoilTestUnit.MilliequivalentsPer100CubicCentimeters
            or SoilTestUnit.NorthCarolinaIndex => Basis.Volume,
            _ => Basis.Weight,
        };

    private void Step(string label, string formula, double to, string sourceId)
    {
        steps.Add(new ConversionStep(label, formula, amount, to, sourceId));
        amount = to;
    }

    private void ToElement()
    {
        if (reading.Form == PrintedForm.Oxide)
        {
            double factor = Cations.OxideFactorOf(reading.Analyte);
            Step("Element", Invariant($"oxide / {factor:0.####}"), amount / factor, AtomicMasses.SourceId);
        }
    }

    private void ToForm(PrintedForm form)
    {
        if (form == PrintedForm.Oxide)
        {
            double factor = Cations.OxideFactorOf(reading.Analyte);
            Step("Oxide", Invariant($"element x {factor:0.####}"), amount * factor, AtomicMasses.SourceId);
        }
    }

    /// <summary>From the printed unit to ppm, mg per liter of soil or lb/ac.</summary>
    private void Open(SoilTestUnit unit)
    {
        switch (unit)
        {
            case SoilTestUnit.KilogramsPerHectare:
                Step("lb/ac", "kg/ha x 0.8922", ApplicationRate.FromKilogramsPerHectare(amount).PoundsPerAcre, "DEF-UNITS");
                break;
            case SoilTestUnit.MilliequivalentsPer100Grams or SoilTestUnit.MilliequivalentsPer100CubicCentimeters:
                double weight = Cations.EquivalentWeightOf(reading.Analyte)!.Value;
                Step(
                    "Concentration",
                    Invariant($"meq x {weight:0.###} x 10"),
                    SoilUnitMath.PpmFromMilliequivalents(amount, weight),
                    AtomicMasses.SourceId
                );
                break;
            case SoilTestUnit.PercentSaturation:
                double capacity = facts.Capacity();
                double charge = amount / 100 * capacity;
                Step("Charge", Invariant($"percent / 100 x {capacity:0.###} meq/100 g"), charge, "PRACTICE");
                Open(SoilTestUnit.MilliequivalentsPer100Grams);
                break;
            case SoilTestUnit.NorthCarolinaIndex or SoilTestUnit.DelawareIndex or SoilTestUnit.OklahomaIndex:
                var scale = facts.Scale(unit);
                Step(
                    "Concentration",
                    Invariant($"index x {scale.PerIndexUnit:0.####}"),
                    amount * scale.PerIndexUnit,
                    scale.Origin.SourceId
                );
                break;
        }
    }

    /// <summary>From ppm, mg per liter of soil or lb/ac to the unit asked for.</summary>
    private void Close(SoilTestUnit unit)
    {
        switch (unit)
        {
            case SoilTestUnit.KilogramsPerHectare:
                Step("kg/ha", "lb/ac x 1.1209", ApplicationRate.FromPoundsPerAcre(amount).KilogramsPerHectare, "DEF-UNITS");
                break;
            case SoilTestUnit.MilliequivalentsPer100Grams or SoilTestUnit.MilliequivalentsPer100CubicCentimeters:
                double weight = Cations.EquivalentWeightOf(reading.Analyte)!.Value;
                Step(
                    "Charge",
                    Invariant($"concentration / ({weight:0.###} x 10)"),
                    SoilUnitMath.MilliequivalentsFromPpm(amount, weight),
                    AtomicMasses.SourceId
                );
                break;
            case SoilTestUnit.PercentSaturation:
                Close(SoilTestUnit.MilliequivalentsPer100Grams);
                double capacity = facts.Capacity();
                Step("Saturation", Invariant($"100 x charge / {capacity:0.###} meq/100 g"), 100 * amount / capacity, "PRACTICE");
                break;
            case SoilTestUnit.NorthCarolinaIndex or SoilTestUnit.DelawareIndex or SoilTestUnit.OklahomaIndex:
                var scale = facts.Scale(unit);
                Step(
                    "Index",
                    Invariant($"concentration / {scale.PerIndexUnit:0.####}"),
                    amount / scale.PerIndexUnit,
                    scale.Origin.SourceId
                );
                break;
        }
    }

    private void Cross(Basis from, Basis to)
    {
        switch (from, to)
        {
            case (Basis.Weight, Basis.Area):
                var down = facts.Layer();
                Step(
                    "lb/ac",
                    Invariant($"ppm x {down.SoilPoundsPerAcre / 1e6:0.####} million lb of soil"),
                    SoilUnitMath.PoundsPerAcreFromPpm(amount, down.SoilPoundsPerAcre),
                    down.SourceId
                );
                break;
            case (Basis.Area, Basis.Weight):
                var up = facts.Layer();
                Step(
                    "ppm",
                    Invariant($"lb/ac / {up.SoilPoundsPerAcre / 1e6:0.####} million lb of soil"),
                    SoilUnitMath.PpmFromPoundsPerAcre(amount, up.SoilPoundsPerAcre),
                    up.SourceId
                );
                break;
            case (Basis.Volume, Basis.Area):
                Step(
                    "lb/ac",
                    Invariant($"mg/dm3 x {facts.Layer().DepthInches:0.##} in x 0.2266"),
                    SoilUnitMath.PoundsPerAcreFromMgPerLiter(amount, facts.Layer().DepthInches),
                    "DEF-UNITS"
                );
                break;
            case (Basis.Area, Basis.Volume):
                Step(
                    "mg/dm3",
                    Invariant($"lb/ac / ({facts.Layer().DepthInches:0.##} in x 0.2266)"),
                    SoilUnitMath.MgPerLiterFromPoundsPerAcre(amount, facts.Layer().DepthInches),
                    "DEF-UNITS"
                );
                break;
            case (Basis.Volume, Basis.Weight):
                Step(
                    "ppm",
                    Invariant($"mg/dm3 / {facts.WeightPerVolume():0.###} g/cm3"),
                    SoilUnitMath.PpmFromMgPerLiter(amount, facts.WeightPerVolume()),
                    "DEF-UNITS"
                );
                break;
            case (Basis.Weight, Basis.Volume):
                Step(
                    "mg/dm3",
                    Invariant($"ppm x {facts.WeightPerVolume():0.###} g/cm3"),
                    SoilUnitMath.MgPerLiterFromPpm(amount, facts.WeightPerVolume()),
                    "DEF-UNITS"
                );
                break;
        }
    }

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}

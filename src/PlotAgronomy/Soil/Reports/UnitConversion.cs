using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Soil;

/// <summary>Walks a reading from its printed unit to another: first to the element on its own basis (weight, volume or
/// area), then to the other basis, then to the unit asked for. Each leg is exact where the definitions allow.</summary>
internal sealed class UnitConversion
{
    private readonly SoilReading reading;
    private readonly SampledSoil soil;
    private readonly ImmutableArray<ConversionStep>.Builder steps = ImmutableArray.CreateBuilder<ConversionStep>();
    private readonly List<Finding> findings = [];
    private double amount;

    private UnitConversion(SoilReading reading, SampledSoil soil)
    {
        this.reading = reading;
        this.soil = soil;
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
        if (unit == reading.Unit && form == reading.Form)
        {
            return new ReadingConversion(reading, reading, [], []);
        }

        Refuse(reading, reading.Unit);
        Refuse(reading, unit);
        var walk = new UnitConversion(reading, soil);
        walk.ToElement();
        walk.Open(reading.Unit);
        walk.Cross(BasisOf(reading.Unit), BasisOf(unit));
        walk.Close(unit);
        walk.ToForm(form);
        var converted = SoilReading.Of(reading.Analyte, walk.amount, unit, reading.Extractant, form);
        return new ReadingConversion(reading, converted, walk.steps.ToImmutable(), walk.findings);
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

    private static void Refuse(SoilReading reading, SoilTestUnit unit)
    {
        bool salts = reading.Analyte == SoilAnalyte.SolubleSalts;
        if (salts || unit == SoilTestUnit.DecisiemensPerMeter)
        {
            throw new ArgumentException($"{reading.Analyte} in {unit} has no conversion to another unit.", nameof(unit));
        }

        if (
            unit
                is SoilTestUnit.MilliequivalentsPer100Grams
                    or SoilTestUnit.MilliequivalentsPer100CubicCentimeters
                    or SoilTestUnit.PercentSaturation
            && Cations.EquivalentWeightOf(reading.Analyte) is null
        )
        {
            throw new ArgumentException(
                $"{reading.Analyte} is not one of the exchangeable cations Ca, Mg, K and Na.",
                nameof(unit)
            );
        }
    }

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
                double capacity = Capacity();
                double charge = amount / 100 * capacity;
                Step("Charge", Invariant($"percent / 100 x {capacity:0.###} meq/100 g"), charge, "PRACTICE");
                Open(SoilTestUnit.MilliequivalentsPer100Grams);
                break;
            case SoilTestUnit.NorthCarolinaIndex or SoilTestUnit.DelawareIndex or SoilTestUnit.OklahomaIndex:
                var scale = Scale(unit);
                Step(
                    "Concentration",
                    Invariant($"index x {scale.PerIndexUnit:0.####}"),
                    amount * scale.PerIndexUnit,
                    scale.SourceId
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
                double capacity = Capacity();
                Step("Saturation", Invariant($"100 x charge / {capacity:0.###} meq/100 g"), 100 * amount / capacity, "PRACTICE");
                break;
            case SoilTestUnit.NorthCarolinaIndex or SoilTestUnit.DelawareIndex or SoilTestUnit.OklahomaIndex:
                var scale = Scale(unit);
                Step(
                    "Index",
                    Invariant($"concentration / {scale.PerIndexUnit:0.####}"),
                    amount / scale.PerIndexUnit,
                    scale.SourceId
                );
                break;
        }
    }

    private void Cross(Basis from, Basis to)
    {
        switch (from, to)
        {
            case (Basis.Weight, Basis.Area):
                var down = Layer();
                Step(
                    "lb/ac",
                    Invariant($"ppm x {down.SoilPoundsPerAcre / 1e6:0.####} million lb of soil"),
                    SoilUnitMath.PoundsPerAcreFromPpm(amount, down.SoilPoundsPerAcre),
                    down.SourceId
                );
                break;
            case (Basis.Area, Basis.Weight):
                var up = Layer();
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
                    Invariant($"mg/dm3 x {Layer().DepthInches:0.##} in x 0.2266"),
                    SoilUnitMath.PoundsPerAcreFromMgPerLiter(amount, Layer().DepthInches),
                    "DEF-UNITS"
                );
                break;
            case (Basis.Area, Basis.Volume):
                Step(
                    "mg/dm3",
                    Invariant($"lb/ac / ({Layer().DepthInches:0.##} in x 0.2266)"),
                    SoilUnitMath.MgPerLiterFromPoundsPerAcre(amount, Layer().DepthInches),
                    "DEF-UNITS"
                );
                break;
            case (Basis.Volume, Basis.Weight):
                Step(
                    "ppm",
                    Invariant($"mg/dm3 / {WeightPerVolume():0.###} g/cm3"),
                    SoilUnitMath.PpmFromMgPerLiter(amount, WeightPerVolume()),
                    "DEF-UNITS"
                );
                break;
            case (Basis.Weight, Basis.Volume):
                Step(
                    "mg/dm3",
                    Invariant($"ppm x {WeightPerVolume():0.###} g/cm3"),
                    SoilUnitMath.MgPerLiterFromPpm(amount, WeightPerVolume()),
                    "DEF-UNITS"
                );
                break;
        }
    }

    private SampledLayer Layer()
    {
        if (soil.Layer is { } layer)
        {
            return layer;
        }

        findings.Add(FindingCatalog.Create("soil-depth-assumed"));
        return SampledLayer.FurrowSlice;
    }

    private double WeightPerVolume()
    {
        if (soil.WeightPerVolume is not { } density)
        {
            throw new ArgumentException(
                "Between a volume (mg/dm3, meq/100 cm3, North Carolina index) and a weight (ppm) the weight per volume of the scooped soil (W/V) is needed.",
                nameof(soil)
            );
        }

        double gramsPerCubicCentimeter = density.GramsPerCubicCentimeter;
        return Guard.Above(gramsPerCubicCentimeter, 0, "g/cm3", nameof(soil));
    }

    private double Capacity()
    {
        if (soil.ExchangeCapacity is not { } capacity)
        {
            throw new ArgumentException("Percent saturation needs the cation exchange capacity.", nameof(soil));
        }

        double byWeight =
            capacity.Basis == CationChargeBasis.Per100Grams
                ? capacity.Milliequivalents
                : capacity.ByWeight(Density.FromGramsPerCubicCentimeter(WeightPerVolume())).Milliequivalents;
        return Guard.Above(byWeight, 0, "meq/100 g", nameof(soil));
    }

    private IndexScale Scale(SoilTestUnit unit)
    {
        var scale = IndexScale.Find(unit, reading.Analyte)
            ?? throw new ArgumentException(
                $"The {SoilWords.For(unit)} is not defined for {SoilWords.For(reading.Analyte)}.",
                nameof(unit)
            );
        if (!IndexScale.Accepts(reading.Extractant))
        {
            throw new ArgumentException(
                $"The {SoilWords.For(unit)} is defined for Mehlich-3, not for {SoilWords.For(reading.Extractant)}.",
                nameof(unit)
            );
        }

        if (scale.Status == DataStatus.Memory)
        {
            findings.Add(MemoryGate.FindingFor($"the {SoilWords.For(unit)} of {SoilWords.For(reading.Analyte)}", scale.SourceId));
        }

        return scale;
    }

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}

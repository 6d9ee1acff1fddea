using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>From a report to what its exchange capacity is summed from.</summary>
internal static class CationSumSteps
{
    /// <summary>Rounded ppm per meq in common use (K 390, Mg 120, Ca 200, Na 230).</summary>
    internal static AcidityTerm CommonDivisors => AcidityTerm.Clemson;

    internal static CationSum ByTerm(SoilReport report, AcidityTerm term)
    {
        var remarks = new CationRemarks();
        if (term.Status == DataStatus.Memory)
        {
            remarks.Add(() => MemoryGate.FindingFor(term.Title, term.Origin));
        }

        var bases = Bases(report, term.Divisors, term.Basis, remarks);
        var buffer = term.Buffers.Select(report.FindBuffer).FirstOrDefault(b => b is not null);
        CationCharge? acidity = null;
        if (buffer is null)
        {
            foreach (var twice in term.Buffers.Select(b => ReadingTwice.OfBuffer(report, b)).OfType<Finding>())
            {
                remarks.Add(() => twice);
            }

            remarks.Add(() =>
                FindingCatalog.Create(
                    SoilCodes.AcidityMissing,
                    ("ph", Ph(report)),
                    ("buffers", string.Join(", ", term.Buffers.Select(SoilWords.For)))
                )
            );
        }
        else if (term.WaterPhLimit is { } limit && report.WaterPh is { } water && water.Value > limit)
        {
            remarks.Add(() =>
                FindingCatalog.Create(
                    SoilCodes.AcidityOutsideDomain,
                    ("term", term.Title),
                    ("limit", Number(limit)),
                    ("ph", Number(water.Value))
                )
            );
        }
        else
        {
            acidity = CationCharge.Of(
                CationMath.AcidityMilliequivalents(buffer.Value, term.StartPh, term.MilliequivalentsPerPhUnit),
                term.Basis
            );
            if (buffer.Value >= term.StartPh)
            {
                remarks.Add(() =>
                    FindingCatalog.Create(
                        SoilCodes.AcidityNoneAboveStart,
                        ("buffer", $"{Number(buffer.Value)} ({SoilWords.For(buffer.Buffer)})"),
                        ("start", Number(term.StartPh)),
                        ("term", term.Title)
                    )
                );
            }
        }

        NoteFreeLime(report, remarks);
        var sum = new CationSum
        {
            Term = term,
            Buffer = buffer,
            Bases = bases,
            Acidity = acidity,
            Basis = term.Basis,
            Remarks = remarks.All,
        };
        return sum with { Remarks = () => Differs(report, sum) is { } differs ? remarks.All().Append(differs) : remarks.All() };
    }

    internal static CationSum ByPrintedAcidity(SoilReport report)
    {
        if (report.ExchangeableAcidity is not { } acidity)
        {
            throw new ArgumentException("The report prints no exchangeable acidity.", nameof(report));
        }

        var remarks = new CationRemarks();
        var bases = Bases(report, CommonDivisors.Divisors, acidity.Basis, remarks);
        NoteFreeLime(report, remarks);
        return WithoutTerm(bases, acidity, acidity.Basis, remarks);
    }

    internal static CationSum WithoutAcidity(SoilReport report)
    {
        if (report.WaterPh is not { } water)
        {
            throw new ArgumentException("Without a water pH acidity cannot be taken as zero.", nameof(report));
        }

        var remarks = new CationRemarks();
        var bases = Bases(report, CommonDivisors.Divisors, CationChargeBasis.Per100Grams, remarks);
        bool nearNeutral = water.Value >= SoilConstants.All["near-neutral-ph"];
        remarks.Add(() =>
            nearNeutral
                ? FindingCatalog.Create(SoilCodes.AcidityTakenAsZero, ("ph", Number(water.Value)))
                : FindingCatalog.Create(SoilCodes.AcidityMissing, ("ph", Number(water.Value)), ("buffers", "none was run"))
        );
        NoteFreeLime(report, remarks);
        return WithoutTerm(bases, nearNeutral ? default(CationCharge) : null, CationChargeBasis.Per100Grams, remarks);
    }

    private static CationSum WithoutTerm(
        ImmutableArray<CationShare> bases,
        CationCharge? acidity,
        CationChargeBasis basis,
        CationRemarks remarks
    ) =>
        new()
        {
            Term = null,
            Buffer = null,
            Bases = bases,
            Acidity = acidity,
            Basis = basis,
            Remarks = remarks.All,
        };

    private static ImmutableArray<CationShare> Bases(
        SoilReport report,
        ImmutableArray<(SoilAnalyte Cation, double PerMilliequivalent)> divisors,
        CationChargeBasis basis,
        CationRemarks remarks
    )
    {
        var soil = SampledSoil.For(report);
        bool byWeight = basis == CationChargeBasis.Per100Grams;
        var chargeUnit = byWeight
            ? SoilTestUnit.MilliequivalentsPer100Grams
            : SoilTestUnit.MilliequivalentsPer100CubicCentimeters;
        var concentrationUnit = byWeight ? SoilTestUnit.PartsPerMillion : SoilTestUnit.MilligramsPerCubicDecimeter;
        var shares = ImmutableArray.CreateBuilder<CationShare>();
        foreach (var (cation, perMilliequivalent) in divisors)
        {
            if (report.Find(cation) is not { } reading)
            {
                foreach (var twice in ReadingTwice.OfAnalyte(report, cation))
                {
                    remarks.Add(() => twice);
                }

                if (cation != SoilAnalyte.Sodium)
                {
                    remarks.Add(() => FindingCatalog.Create(SoilCodes.CationMissing, ("cation", SoilWords.For(cation))));
                }

                continue;
            }

            bool isCharge =
                reading.Unit
                is SoilTestUnit.MilliequivalentsPer100Grams
                    or SoilTestUnit.MilliequivalentsPer100CubicCentimeters
                    or SoilTestUnit.PercentSaturation;
            if (Converted(reading, isCharge ? chargeUnit : concentrationUnit) is not { } converted)
            {
                remarks.Add(() => FindingCatalog.Create(SoilCodes.CationMissing, ("cation", SoilWords.For(cation))));
                continue;
            }

            (double Concentration, double PerMilliequivalent)? division = isCharge ? null : (converted, perMilliequivalent);
            double milliequivalents = isCharge ? converted : CationMath.Charge(converted, perMilliequivalent);

            shares.Add(new CationShare(cation, CationCharge.Of(milliequivalents, basis)) { Division = division });
        }

        return shares.ToImmutable();

        double? Converted(SoilReading reading, SoilTestUnit unit)
        {
            try
            {
                var conversion = reading.ConvertTo(unit, soil);
                remarks.Add(conversion);
                return conversion.Converted.PrintedValue;
            }
            catch (ArgumentException)
            {
                // The report lacks what the conversion rests on (capacity, weight per volume, extractant): as if not printed.
                return null;
            }
        }
    }

    private static void NoteFreeLime(SoilReport report, CationRemarks remarks)
    {
        if (report.WaterPh is { } water && water.Value > SoilConstants.All["free-lime-ph"])
        {
            remarks.Add(() => FindingCatalog.Create(SoilCodes.CalciumInflated, ("ph", Number(water.Value))));
        }
    }

    private static Finding? Differs(SoilReport report, CationSum sum) =>
        report.PrintedExchangeCapacity is { } printed
        && sum.Capacity is { } computed
        && printed.Basis == computed.Basis
        && Math.Abs(computed.Milliequivalents - printed.Milliequivalents)
            > SoilConstants.All["capacity-differs"] * printed.Milliequivalents
            ? FindingCatalog.Create(
                SoilCodes.CapacityDiffers,
                ("term", sum.Term!.Title),
                ("computed", computed.ToString()),
                ("printed", printed.ToString())
            )
            : null;

    private static string Ph(SoilReport report) => report.WaterPh is { } water ? Number(water.Value) : "not printed";

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}

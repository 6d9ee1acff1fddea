namespace PlotAgronomy;

/// <summary>The unit words of a mass for each area. Factors are exact (source DEF-UNITS).</summary>
internal static class RateUnits
{
    internal static readonly UnitWords Words = new(
        "a rate",
        "'40 lb/ac' or '2.25 ton/ac'",
        ("lb/ac|lb/acre|lbs/ac|lbs/acre", 1),
        ("oz/ac|oz/acre", 1.0 / 16),
        ("ton/ac|ton/acre|tons/ac|tons/acre", 2000),
        ("lb/1000 ft2|lb/1000 sq ft|lb/1,000 ft2", ExactUnits.SquareFeetPerAcre / 1000),
        ("oz/1000 ft2|oz/1000 sq ft|oz/1,000 ft2", ExactUnits.SquareFeetPerAcre / 1000 / 16),
        ("lb/100 ft2|lb/100 sq ft", ExactUnits.SquareFeetPerAcre / 100),
        ("kg/ha", ExactUnits.SquareMetersPerAcre / 10_000 / ExactUnits.KilogramsPerPound),
        ("t/ha|tonne/ha", ExactUnits.SquareMetersPerAcre / 10 / ExactUnits.KilogramsPerPound),
        ("g/m2|g/m²", ExactUnits.SquareMetersPerAcre / 1000 / ExactUnits.KilogramsPerPound)
    );
}

using System.Collections.Immutable;
using PlotAgronomy.Soil;

namespace PlotAgronomy;

/// <summary>What an institution says of soil samples and reports.</summary>
/// <example>
/// <code>
/// Console.WriteLine(Institution.NorthCarolina.SoilProgram);
/// // North Carolina
/// </code>
/// </example>
public static class InstitutionSoil
{
    extension(Institution institution)
    {
        /// <summary>Gets how it reports soil tests; null when that is not in the table.</summary>
        public SoilProgram? SoilProgram => SoilProgram.All.FirstOrDefault(p => p.Institution == institution);

        /// <summary>Gets its rules for taking samples.</summary>
        public ImmutableArray<SamplingRule> SamplingRules => [.. SamplingRule.All.Where(r => r.Institution == institution)];
    }
}

using System.Collections.Immutable;
using PlotAgronomy.Liming;

namespace PlotAgronomy;

/// <summary>What an institution says of lime.</summary>
/// <example>
/// <code>
/// foreach (var method in Institution.NorthCarolina.LimeMethods)
/// {
///     Console.WriteLine(method);
/// }
/// // North Carolina, Mehlich buffer
/// </code>
/// </example>
public static class InstitutionLime
{
    extension(Institution institution)
    {
        /// <summary>Gets its lime methods whose numbers were checked.</summary>
        public ImmutableArray<LimeMethod> LimeMethods => [.. LimeMethod.All.Where(m => m.Institution == institution)];

        /// <summary>Gets those of its lime methods whose numbers are from memory.</summary>
        public ImmutableArray<LimeMethod> UncheckedLimeMethods =>
            [.. LimeMethod.Unchecked.Where(m => m.Institution == institution)];

        /// <summary>Gets how it rounds a lime rate on its report; null when it prints no rounding.</summary>
        public LimeRounding? LimeRounding => LimeRounding.ForInstitution(institution);

        /// <summary>Gets a value indicating whether it prints target pHs; see <see cref="LimeTarget"/>.</summary>
        public bool PrintsLimeTargets => LimeTarget.Institutions.Contains(institution);
    }
}

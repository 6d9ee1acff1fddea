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

        /// <summary>Gets how it rounds a lime rate on its report; null when it prints no rounding.</summary>
        internal LimeRounding? LimeRounding => LimeRounding.ForInstitution(institution);
    }
}

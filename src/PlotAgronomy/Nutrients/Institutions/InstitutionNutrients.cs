using System.Collections.Immutable;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy;

/// <summary>What an institution says of nutrients.</summary>
/// <example>
/// <code>
/// foreach (var system in Institution.NorthCarolina.NutrientSystems)
/// {
///     Console.WriteLine(system);
/// }
/// // North Carolina index equations (2014)
/// </code>
/// </example>
public static class InstitutionNutrients
{
    extension(Institution institution)
    {
        /// <summary>Gets the recommendation systems it publishes, or takes part in, whose numbers were checked.</summary>
        public ImmutableArray<RecommendationSystem> NutrientSystems =>
            [.. RecommendationSystem.All.Where(s => IsOf(s, institution))];

        /// <summary>Gets those of its recommendation systems whose numbers are from memory.</summary>
        internal ImmutableArray<RecommendationSystem> UncheckedNutrientSystems =>
            [.. RecommendationSystem.Unchecked.Where(s => IsOf(s, institution))];

        /// <summary>Gets the rating systems it publishes.</summary>
        public ImmutableArray<RatingSystem> RatingSystems => [.. RatingSystem.All.Where(s => s.Institution == institution)];

        /// <summary>Gets what it credits a legume with.</summary>
        public ImmutableArray<LegumeCredit> LegumeCredits => [.. LegumeCredit.All.Where(c => c.Institution == institution)];
    }

    private static bool IsOf(RecommendationSystem system, Institution institution) =>
        system.Institution == institution || ProgramSystems.IdsOf(institution).Contains(system.Id);
}

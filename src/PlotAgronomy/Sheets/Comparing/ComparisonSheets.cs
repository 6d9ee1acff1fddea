using PlotAgronomy.Planning;

namespace PlotAgronomy.Sheets;

/// <summary>The sheets of what a plan leaves open, side by side.</summary>
public static class ComparisonSheets
{
    extension(FieldSheet)
    {
        /// <summary>Says what every recommendation system that accepts the plan's report would ask for.</summary>
        /// <param name="compared">Answers, as <see cref="PlanComparing.CompareSystems"/> gives them.</param>
        /// <returns>The sheet.</returns>
        public static FieldSheet Of(SystemsForPlan compared)
        {
            ArgumentNullException.ThrowIfNull(compared);
            return SystemsSheet.Write(compared);
        }

        /// <summary>Says what every lime method that accepts the plan's reading would ask for.</summary>
        /// <param name="compared">Answers, as <see cref="PlanComparing.CompareLime"/> gives them.</param>
        /// <returns>The sheet.</returns>
        public static FieldSheet Of(LimeMethodsForPlan compared)
        {
            ArgumentNullException.ThrowIfNull(compared);
            return LimeSheet.Write(compared);
        }

        /// <summary>Says what the same living stand costs from each of several lots of a kind.</summary>
        /// <param name="compared">Answers, as <see cref="PlanComparing.CompareSeedLots"/> gives them.</param>
        /// <returns>The sheet.</returns>
        public static FieldSheet Of(SeedLotsForPlan compared)
        {
            ArgumentNullException.ThrowIfNull(compared);
            return SeedLotsSheet.Write(compared);
        }

        /// <summary>Says what a store's blend really plants, and what plain seed would cost.</summary>
        /// <param name="compared">Answers, as <see cref="PlanComparing.CompareStoreBlends"/> gives them.</param>
        /// <returns>The sheet.</returns>
        public static FieldSheet Of(StoreBlendsForPlan compared)
        {
            ArgumentNullException.ThrowIfNull(compared);
            return StoreBlendsSheet.Write(compared);
        }

        /// <summary>Says how much ground what is there will do, and what runs out first.</summary>
        /// <param name="counted">Answer, as <see cref="PlanComparing.UseUp"/> gives it.</param>
        /// <returns>The sheet.</returns>
        public static FieldSheet Of(UseUp counted)
        {
            ArgumentNullException.ThrowIfNull(counted);
            return UseUpSheet.Write(counted);
        }
    }
}

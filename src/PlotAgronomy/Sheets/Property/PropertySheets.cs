using PlotAgronomy.Planning;

namespace PlotAgronomy.Sheets;

/// <summary>The sheets of several plans.</summary>
public static class PropertySheets
{
    extension(FieldSheet)
    {
        /// <summary>Says what several plots buy together.</summary>
        /// <param name="property">The plots.</param>
        /// <returns>The sheet.</returns>
        public static FieldSheet Of(PropertyPlan property)
        {
            ArgumentNullException.ThrowIfNull(property);
            return PropertySheet.Write(property);
        }

        /// <summary>Says how two plans differ.</summary>
        /// <param name="plans">The plans.</param>
        /// <returns>The sheet.</returns>
        public static FieldSheet Of(PlansSideBySide plans)
        {
            ArgumentNullException.ThrowIfNull(plans);
            return SideBySideSheet.Write(plans);
        }
    }
}

using PlotAgronomy.Fertilizers.Solver;

namespace PlotAgronomy.Tests.Fertilizers.Solver;

/// <summary>Shelves drawn from a seed: analyses and prices of the kind a store has, and every awkward case.</summary>
internal static class RandomShelves
{
    internal static PackageProblem Draw(int seed) =>
        Draw(new Random(seed), products: 2 + (seed % 11), nutrients: 1 + (seed % 8), seed);

    internal static PackageProblem Draw(Random random, int products, int nutrients, int kind)
    {
        var problem = new PackageProblem(nutrients, products);
        double[] packagePounds = [50, 50, 50, 40, 25];
        for (int product = 0; product < products; product++)
        {
            if (product > 0 && kind % 5 == 0 && random.Next(3) == 0)
            {
                Duplicate(problem, random.Next(product), product);
                continue;
            }

            double pounds = packagePounds[random.Next(packagePounds.Length)];
            for (int nutrient = 0; nutrient < nutrients; nutrient++)
            {
                // Most products are straight or carry two or three nutrients; minor nutrients come in small shares.
                int most = nutrient < 3 ? 46 : 20;
                problem[nutrient, product] = random.Next(nutrients) < 2 ? pounds * random.Next(1, most) / 100 : 0;
            }

            problem.Price[product] = kind % 7 == 0 && random.Next(4) == 0 ? 0
                : kind % 3 == 0 ? random.Next(8, 60) : random.Next(800, 6000) / 100.0;
        }

        for (int nutrient = 0; nutrient < nutrients; nutrient++)
        {
            problem.Need[nutrient] = random.Next(4) == 0 ? 0 : random.Next(1, 60);
            bool capped = random.Next(kind % 4 == 0 ? 2 : 4) == 0;
            if (capped)
            {
                // A cap at the need itself is an equality; a cap of zero forbids the nutrient.
                problem.Cap[nutrient] = random.Next(6) == 0 ? problem.Need[nutrient] : problem.Need[nutrient] + random.Next(1, 30);
            }
        }

        return problem;
    }

    private static void Duplicate(PackageProblem problem, int from, int to)
    {
        problem.Price[to] = problem.Price[from];
        for (int nutrient = 0; nutrient < problem.Nutrients; nutrient++)
        {
            problem[nutrient, to] = problem[nutrient, from];
        }
    }
}

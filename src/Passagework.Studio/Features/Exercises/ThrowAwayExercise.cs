using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Exercises;

/// <summary>Takes an own exercise off the shelf; it can be brought back.</summary>
internal sealed class ThrowAwayExercise(Store store, TimeProvider time) : ThrowAway<ExerciseRow>(store, time);

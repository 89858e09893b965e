/** Columns: see ../exercises.ts. Generic names; muscles as in anatomy (source key: gray-2015, from memory). */
export const exerciseRows = `
back squat | barbell | vastus muscles; gluteus maximus | adductor magnus; erector spinae; rectus femoris | main | -
front squat | barbell | vastus muscles | gluteus maximus; rectus femoris; erector spinae | main | -
hack squat | plate-loaded machine | vastus muscles | gluteus maximus; rectus femoris; adductor magnus | - | -
leg press | plate-loaded machine | vastus muscles; gluteus maximus | adductor magnus; rectus femoris | main | -
one-leg press | plate-loaded machine | vastus muscles; gluteus maximus | adductor magnus; rectus femoris | one side | -
split squat | dumbbell pair | vastus muscles; gluteus maximus | adductor magnus; rectus femoris; gluteus medius | one side | -
lunge | dumbbell pair | vastus muscles; gluteus maximus | adductor magnus; rectus femoris; gluteus medius | one side | -
step-up | dumbbell pair | vastus muscles; gluteus maximus | rectus femoris; gluteus medius | one side | -
leg extension | stack machine | vastus muscles; rectus femoris | - | - | -
one-leg extension | stack machine | vastus muscles; rectus femoris | - | one side | -
deadlift | barbell | gluteus maximus; erector spinae; biceps femoris; semitendinosus and semimembranosus | vastus muscles; latissimus dorsi; trapezius, descending part; forearm flexors | main | -
stiff-legged deadlift | barbell | biceps femoris; semitendinosus and semimembranosus; gluteus maximus | erector spinae; forearm flexors | main | -
trap-bar deadlift | barbell | vastus muscles; gluteus maximus | erector spinae; biceps femoris; semitendinosus and semimembranosus; trapezius, descending part; forearm flexors | main | -
hip thrust | barbell | gluteus maximus | biceps femoris; semitendinosus and semimembranosus; adductor magnus | - | -
good morning | barbell | biceps femoris; semitendinosus and semimembranosus | erector spinae; gluteus maximus | - | -
back extension | body weight | erector spinae; gluteus maximus | biceps femoris; semitendinosus and semimembranosus | - | 0.5
lying leg curl | stack machine | biceps femoris; semitendinosus and semimembranosus | gastrocnemius | - | -
seated leg curl | stack machine | biceps femoris; semitendinosus and semimembranosus | gastrocnemius | - | -
one-leg curl | plate-loaded machine | biceps femoris; semitendinosus and semimembranosus | gastrocnemius | one side | -
hip abduction | stack machine | gluteus medius | gluteus maximus | - | -
hip adduction | stack machine | adductor magnus | - | - | -
standing calf raise | stack machine | gastrocnemius | soleus | - | -
seated calf raise | plate-loaded machine | soleus | gastrocnemius | - | -
shin raise | stack machine | tibialis anterior | - | - | -
bench press | barbell | pectoralis major, sternocostal part | deltoid, anterior part; triceps brachii; pectoralis major, clavicular part | main | -
incline bench press | barbell | pectoralis major, clavicular part | deltoid, anterior part; triceps brachii; pectoralis major, sternocostal part | main | -
close-grip bench press | barbell | triceps brachii; pectoralis major, sternocostal part | deltoid, anterior part | - | -
dumbbell bench press | dumbbell pair | pectoralis major, sternocostal part | deltoid, anterior part; triceps brachii; pectoralis major, clavicular part | main | -
incline dumbbell press | dumbbell pair | pectoralis major, clavicular part | deltoid, anterior part; triceps brachii; pectoralis major, sternocostal part | - | -
machine chest press | plate-loaded machine | pectoralis major, sternocostal part | deltoid, anterior part; triceps brachii | - | -
machine incline press | plate-loaded machine | pectoralis major, clavicular part | deltoid, anterior part; triceps brachii | - | -
chest fly | stack machine | pectoralis major, sternocostal part | deltoid, anterior part; pectoralis major, clavicular part | - | -
dumbbell fly | dumbbell pair | pectoralis major, sternocostal part | deltoid, anterior part; pectoralis major, clavicular part | - | -
dip | body weight | pectoralis major, sternocostal part; triceps brachii | deltoid, anterior part | - | 1
push-up | body weight | pectoralis major, sternocostal part | deltoid, anterior part; triceps brachii; pectoralis major, clavicular part | - | 0.65
overhead press | barbell | deltoid, anterior part | deltoid, lateral part; triceps brachii; pectoralis major, clavicular part; trapezius, descending part | main | -
dumbbell shoulder press | dumbbell pair | deltoid, anterior part | deltoid, lateral part; triceps brachii | - | -
machine shoulder press | plate-loaded machine | deltoid, anterior part | deltoid, lateral part; triceps brachii | - | -
lateral raise | dumbbell pair | deltoid, lateral part | deltoid, anterior part; trapezius, descending part | - | -
machine lateral raise | stack machine | deltoid, lateral part | - | - | -
one-arm cable lateral raise | stack machine | deltoid, lateral part | - | one side | -
front raise | dumbbell pair | deltoid, anterior part | pectoralis major, clavicular part; deltoid, lateral part | - | -
reverse fly | stack machine | deltoid, posterior part | trapezius, transverse part; rhomboids | - | -
face pull | stack machine | deltoid, posterior part | trapezius, transverse part; supraspinatus and infraspinatus; rhomboids | - | -
upright row | barbell | deltoid, lateral part; trapezius, descending part | biceps brachii; deltoid, anterior part | - | -
shrug | barbell | trapezius, descending part | forearm flexors | - | -
pull-up | body weight | latissimus dorsi | teres major; biceps brachii; brachialis; rhomboids; trapezius, ascending part | main | 1
chin-up | body weight | latissimus dorsi; biceps brachii | teres major; brachialis; rhomboids | main | 1
lat pulldown | stack machine | latissimus dorsi | teres major; biceps brachii; brachialis; rhomboids | - | -
straight-arm pulldown | stack machine | latissimus dorsi | teres major; triceps brachii | - | -
pullover | dumbbell pair | latissimus dorsi | pectoralis major, sternocostal part; triceps brachii; teres major | - | -
barbell row | barbell | latissimus dorsi; trapezius, transverse part | rhomboids; deltoid, posterior part; biceps brachii; erector spinae; teres major | main | -
one-arm dumbbell row | one dumbbell | latissimus dorsi | trapezius, transverse part; rhomboids; deltoid, posterior part; biceps brachii; teres major | one side | -
seated cable row | stack machine | latissimus dorsi; trapezius, transverse part | rhomboids; deltoid, posterior part; biceps brachii; teres major | - | -
machine row | plate-loaded machine | latissimus dorsi; trapezius, transverse part | rhomboids; deltoid, posterior part; biceps brachii; teres major | - | -
one-arm machine row | plate-loaded machine | latissimus dorsi; trapezius, transverse part | rhomboids; deltoid, posterior part; biceps brachii; teres major | one side | -
T-bar row | plate-loaded machine | latissimus dorsi; trapezius, transverse part | rhomboids; deltoid, posterior part; biceps brachii; erector spinae; teres major | - | -
barbell curl | barbell | biceps brachii | brachialis; brachioradialis; forearm flexors | - | -
dumbbell curl | dumbbell pair | biceps brachii | brachialis; brachioradialis | - | -
incline dumbbell curl | dumbbell pair | biceps brachii | brachialis | - | -
one-arm preacher curl | one dumbbell | biceps brachii; brachialis | brachioradialis | one side | -
hammer curl | dumbbell pair | brachialis; brachioradialis | biceps brachii | - | -
cable curl | stack machine | biceps brachii | brachialis; brachioradialis | - | -
reverse curl | barbell | brachioradialis | brachialis; forearm extensors | - | -
wrist curl | barbell | forearm flexors | - | - | -
cable pushdown | stack machine | triceps brachii | - | - | -
lying triceps extension | barbell | triceps brachii | - | - | -
overhead triceps extension | stack machine | triceps brachii | - | - | -
one-arm cable extension | stack machine | triceps brachii | - | one side | -
cable crunch | stack machine | rectus abdominis | external oblique | - | -
hanging leg raise | body weight | rectus abdominis; iliopsoas | external oblique; rectus femoris | - | 0.35
machine crunch | stack machine | rectus abdominis | external oblique | - | -
side bend | one dumbbell | external oblique | erector spinae | one side | -
external rotation | stack machine | supraspinatus and infraspinatus | deltoid, posterior part | one side | -
`;
